// A step that is hard to take back: what it does, and a yes or a no.
//
// In   shown, title, text, act (what the button says)
// Out  decided, left
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls

PanelFrame {
    id: root

    property string text
    property string act
    signal decided

    onOpened: leave.forceActiveFocus()
    acts: [
        ActButton {
            objectName: "confirm"
            text: root.act
            primary: true
            onClicked: root.decided()
        },
        ActButton {
            id: leave

            text: qsTr("Leave it as it is")
            onClicked: root.left()
        }
    ]

    Words {
        text: root.text
        Layout.fillWidth: true
    }
}
