// Why a record is corrected, what that changes, and what the phone gets of it.
//
// In   editor
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property TreatmentEditor editor

    spacing: Theme.gapSmall

    LineField {
        objectName: "correctionReason"
        label: qsTr("Why the record is corrected")
        value: root.editor.reason
        onEdited: text => root.editor.reason = text
        Layout.fillWidth: true
    }
    Told {
        text: root.editor.correctionNews
        alarm: true
        Layout.fillWidth: true
    }
    ActButton {
        objectName: "seeNews"
        visible: root.editor.correctionNews.length > 0
        text: qsTr("I have seen it")
        hint: qsTr("Your draft stays as it is")
        quiet: true
        onClicked: root.editor.seeNews()
    }
    Heading {
        level: 2
        text: qsTr("What this changes")
        Layout.fillWidth: true
    }
    Words {
        visible: root.editor.corrections.length === 0
        text: qsTr("Nothing yet. Go through the steps and set right what is wrong.")
        soft: true
        Layout.fillWidth: true
    }
    Repeater {
        model: root.editor.corrections

        Words {
            required property string modelData

            text: modelData
            Layout.fillWidth: true
        }
    }
    Words {
        text: root.editor.phoneKeeps
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("The former record stays with the course. Whose treatment it is cannot be corrected here.")
        soft: true
        Layout.fillWidth: true
    }
}
