// The chosen instruction: its days, when it rings, and the clinic's own words.
//
// In   editor
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property ProtocolEditor editor

    spacing: Theme.gap

    GridLayout {
        columns: Math.max(1, Math.floor(root.width / (11 * Theme.textBody)))
        columnSpacing: Theme.gap
        rowSpacing: Theme.gapSmall
        Layout.fillWidth: true

        StepField {
            label: qsTr("From day")
            from: 0
            to: 60
            value: root.editor.firstDay
            onMoved: value => root.editor.firstDay = value
            Layout.fillWidth: true
            Layout.preferredWidth: 1
        }
        StepField {
            label: qsTr("To day")
            from: 0
            to: 60
            value: root.editor.lastDay
            onMoved: value => root.editor.lastDay = value
            Layout.fillWidth: true
            Layout.preferredWidth: 1
        }
        StepField {
            label: qsTr("Every how many days")
            from: 1
            to: 60
            value: root.editor.everyDays
            onMoved: value => root.editor.everyDays = value
            Layout.fillWidth: true
            Layout.preferredWidth: 1
        }
    }
    LineField {
        label: qsTr("Reminds at (empty: a rule to keep, nothing rings)")
        value: root.editor.times
        problem: root.editor.timesProblem
        onFinished: text => root.editor.setTimes(text)
        Layout.fillWidth: true
    }
    LineField {
        label: qsTr("The clinic's own words, added for the patient")
        value: root.editor.clinicText
        onFinished: text => root.editor.clinicText = text
        Layout.fillWidth: true
    }
    TickBox {
        text: qsTr("Rings in quiet hours too")
        checked: root.editor.ignoresQuiet
        onToggled: root.editor.ignoresQuiet = checked
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Take it out of the plan")
        hint: root.editor.chosenName
        quiet: true
        tone: Theme.callNow
        onClicked: root.editor.removeChosen()
    }
}
