// A decision that is kept with its reason. No reason, no decision.
//
// In   shown, title, text, act (what the button says)
// Out  decided(reason), left
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls

PanelFrame {
    id: root

    property string text
    property string act
    property string reason
    signal decided(string reason)

    onOpened: root.reason = ""
    acts: [
        ActButton {
            text: root.act
            primary: true
            enabled: root.reason.trim().length > 0
            onClicked: root.decided(root.reason)
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
        onEdited: text => root.reason = text
        Layout.fillWidth: true
    }
}
