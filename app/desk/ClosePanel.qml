// Closing a finding: what came of it, and a word about it. No outcome, no closing.
//
// In   shown, title, outcomes, begun and place (where the note is kept until it is decided)
// Out  decided(outcome, note), left
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk

PanelFrame {
    id: root

    required property list<string> outcomes
    required property Begun begun
    property string place
    property int outcome: 0
    property string note
    signal decided(int outcome, string note)

    onOpened: root.outcome = 0
    onPlaceChanged: root.note = root.begun.words(root.place)
    acts: [
        ActButton {
            objectName: "closeIt"
            text: qsTr("Close the finding")
            primary: true
            enabled: root.outcome > 0
            onClicked: { root.begun.keep(root.place, ""); root.decided(root.outcome, root.note); }
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
        onEdited: text => { root.note = text; root.begun.keep(root.place, text); }
        Layout.fillWidth: true
    }
}
