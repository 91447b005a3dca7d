// When the treatment was: its day and time, and what is asked about them.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    property TreatmentEditor editor
    property real room: 0
    readonly property bool ready: root.editor !== null
    readonly property bool asked: root.ready && root.editor.whenQuestion.length > 0

    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: qsTr("When the treatment was")
        Layout.fillWidth: true
    }
    GridLayout {
        columns: root.room > 24 * Theme.textBody ? 2 : 1
        columnSpacing: Theme.gapSmall
        rowSpacing: Theme.gapSmall
        Layout.fillWidth: true
        Layout.fillHeight: false

        LineField {
            objectName: "treatmentDay"
            label: qsTr("Day, year-month-day")
            value: root.ready ? root.editor.day : ""
            onEdited: text => { if (root.ready) { root.editor.day = text; } }
            Layout.fillWidth: true
        }
        LineField {
            objectName: "treatmentTime"
            label: qsTr("Time, hours:minutes")
            value: root.ready ? root.editor.time : ""
            onEdited: text => { if (root.ready) { root.editor.time = text; } }
            Layout.fillWidth: true
        }
    }
    Told {
        text: root.ready ? root.editor.whenProblem : ""
        alarm: true
        Layout.fillWidth: true
    }
    Told {
        visible: root.asked
        text: root.asked ? root.editor.whenQuestion : ""
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        ActButton {
            objectName: "whenRight"
            visible: root.asked
            text: qsTr("It was then")
            onClicked: root.editor.confirmWhen()
        }
        ActButton {
            objectName: "whenNow"
            text: qsTr("It was just now")
            quiet: !root.asked
            onClicked: root.editor.takeNow()
        }
    }
    Words {
        visible: root.ready && !root.editor.correction
        text: qsTr("The days of the course count from here. Unless you change it, today's record takes the time at which you record it.")
        soft: true
        Layout.fillWidth: true
    }
}
