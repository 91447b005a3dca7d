// A new desk joins its colleagues' clinic: code, six digits, keys.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property ApplyBoard board: root.program.applying

    title: root.board.title

    Words {
        text: root.board.text
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    Told {
        text: root.board.problem
        alarm: true
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    LineField {
        id: code

        objectName: "deskCode"
        visible: root.board.typing && !root.board.joined
        label: qsTr("The code on the other screen")
        onAccepted: address.field.forceActiveFocus()
        Layout.fillWidth: true
        Layout.maximumWidth: 30 * Theme.textBody
    }
    LineField {
        id: address

        visible: code.visible
        label: qsTr("The hub's address under it")
        hint: "hub.example:8443"
        onAccepted: root.board.start(code.field.text, address.field.text)
        Layout.fillWidth: true
        Layout.maximumWidth: 30 * Theme.textBody
    }
    Words {
        objectName: "deskNumber"
        visible: root.board.comparing
        text: root.board.number
        font.pixelSize: Theme.textHuge
        font.letterSpacing: 4
        strong: true
        Accessible.name: qsTr("Six digits: %1").arg(root.board.number.split("").join(" "))
    }
    Flow {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        ActButton {
            visible: code.visible
            text: qsTr("Join")
            primary: true
            enabled: code.field.text.length > 0 && address.field.text.length > 0
            onClicked: root.board.start(code.field.text, address.field.text)
        }
        ActButton {
            visible: root.board.ready
            text: qsTr("Say who is here")
            primary: true
            onClicked: root.program.whoAmI()
        }
        ActButton {
            visible: root.board.joined && !root.board.ready
            text: qsTr("Ask the hub now")
            primary: true
            enabled: !root.program.hub.busy
            onClicked: root.program.hub.syncNow()
        }
        ActButton {
            visible: !root.board.joined
            text: root.board.typing ? qsTr("Back to the clinic") : qsTr("Stop")
            onClicked: { root.board.startOver(); root.program.openClinic(); }
        }
    }
}
