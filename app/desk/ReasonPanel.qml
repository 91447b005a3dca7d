// A decision that is kept with its reason. No reason, no decision.
//
// In   shown, title, text, act (what the button says), begun and place (where the reason is kept until it is decided)
// Out  decided(reason), left
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk

PanelFrame {
    id: root

    property string text
    property string act
    required property Begun begun
    property string place
    property string reason
    signal decided(string reason)

    onPlaceChanged: root.reason = root.begun.words(root.place)
    acts: [
        ActButton {
            text: root.act
            primary: true
            enabled: root.reason.trim().length > 0
            onClicked: { root.begun.keep(root.place, ""); root.decided(root.reason); }
        },
        ActButton {
            text: qsTr("Leave it as it is")
            quiet: true
            onClicked: root.left()
        }
    ]

    Words {
        text: root.text
        Layout.fillWidth: true
    }
    NoteField {
        label: qsTr("Reason")
        value: root.reason
        lines: 2
        onEdited: text => { root.reason = text; root.begun.keep(root.place, text); }
        Layout.fillWidth: true
    }
}
