// A grave step: what it does, what it asks for, and a yes or a no.
//
// In   shown, title, text, act (what the button says), seconds, problem
// Out  decided(passphrase, second), left
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls

PanelFrame {
    id: root

    property string text
    property string act
    property alias seconds: fields.seconds
    property alias problem: fields.problem
    signal decided(string passphrase, int second)

    onOpened: leave.forceActiveFocus()
    acts: [
        ActButton {
            objectName: "confirm"
            text: root.act
            primary: true
            enabled: fields.passphrase.length > 0
            onClicked: root.decided(fields.passphrase, fields.second)
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
    StepFields {
        id: fields

        fresh: !root.shown
        Layout.fillWidth: true
    }
}
