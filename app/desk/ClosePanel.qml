// Closing a finding: what came of it, and a word about it. No outcome, no closing.
//
// In   shown, title, outcomes
// Out  decided(outcome, note), left
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls

PanelFrame {
    id: root

    required property list<string> outcomes
    property int outcome: 0
    property string note
    signal decided(int outcome, string note)

    onOpened: { root.outcome = 0; root.note = ""; }
    acts: [
        ActButton {
            objectName: "closeIt"
            text: qsTr("Close the finding")
            primary: true
            enabled: root.outcome > 0
            onClicked: root.decided(root.outcome, root.note)
        },
        ActButton {
            text: qsTr("Keep it open")
            quiet: true
            onClicked: root.left()
        }
    ]

    Choice {
        label: qsTr("What came of it")
        options: root.outcomes
        current: root.outcome - 1
        onChosen: index => root.outcome = index + 1
        Layout.fillWidth: true
    }
    NoteField {
        label: qsTr("Note")
        value: root.note
        lines: 2
        onEdited: text => root.note = text
        Layout.fillWidth: true
    }
}
