// Corrects a patient's name, number and language; what was written before stands below.
//
// In   editor
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PanelFrame {
    id: root

    required property PatientEditor editor

    shown: root.editor.shown
    title: root.editor.title
    onLeft: root.editor.setAside()
    acts: [
        ActButton {
            objectName: "saveCorrection"
            text: qsTr("Record the correction")
            primary: true
            enabled: root.editor.savable
            onClicked: root.editor.save()
        },
        ActButton {
            text: qsTr("Leave it as it is")
            quiet: true
            onClicked: root.editor.leave()
        }
    ]

    Told {
        text: root.editor.meanwhile
        Layout.fillWidth: true
    }
    Told {
        text: root.editor.problem
        alarm: true
        Layout.fillWidth: true
    }
    LineField {
        objectName: "correctedName"
        label: qsTr("Name")
        value: root.editor.name
        onEdited: text => root.editor.name = text
        Layout.fillWidth: true
    }
    LineField {
        objectName: "correctedPhone"
        label: qsTr("Phone number, to call the patient")
        value: root.editor.phone
        onEdited: text => root.editor.phone = text
        Layout.fillWidth: true
    }
    Choice {
        label: qsTr("Language of the diary")
        options: root.editor.languages
        current: root.editor.language
        onChosen: index => root.editor.language = index
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("Every desk of the clinic shows it from then on. The patient's phone is told nothing of it: she chooses the language there herself.")
        soft: true
        small: true
        Layout.fillWidth: true
    }
    Repeater {
        model: root.editor.history

        Words {
            required property string modelData

            text: modelData
            soft: true
            small: true
            Layout.fillWidth: true
        }
    }
}
