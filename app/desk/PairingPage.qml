// Linking the patient's phone, in the room: code, six digits, confirm.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property PairingBoard board: root.program.pairing

    title: root.board.title
    subtitle: root.board.name

    Rectangle {
        visible: root.board.alarming
        implicitHeight: stop.implicitHeight + 2 * Theme.gap
        color: Theme.emergencyFill
        radius: Theme.corner
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
        Accessible.name: stop.text

        Words {
            id: stop

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            anchors.margins: Theme.gapLarge
            text: root.board.text
            strong: true
            color: Theme.inkOnAlarm
            font.pixelSize: Theme.textLarge
        }
    }
    Words {
        visible: !root.board.alarming
        text: root.board.text
        Layout.maximumWidth: 46 * Theme.textBody
        Layout.fillWidth: true
    }
    PairingChoice {
        visible: root.board.choosing && !root.board.forDesk
        board: root.board
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    TickBox {
        visible: root.board.choosing && root.board.forDesk
        text: qsTr("It shall hold the clinic's root key: link phones, add and shut out desks")
        checked: root.board.owner
        onToggled: root.board.owner = checked
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    Told {
        visible: root.board.choosing && root.board.forDesk && root.board.blocked.length > 0
        text: root.board.blocked
        alarm: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.board.choosing && text.length > 0
        text: root.board.replacingText
        strong: true
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    TickBox {
        visible: root.board.choosing && root.board.replacing
        text: qsTr("The old phone is lost: the hub refuses it at once, and what it did not send stays unknown")
        checked: root.board.oldLost
        onToggled: root.board.oldLost = checked
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    StepFields {
        id: step

        visible: root.board.choosing && (root.board.forDesk || root.board.replacing)
        asksPassphrase: root.board.forDesk || root.board.oldLost
        seconds: root.board.seconds
        problem: root.board.stepProblem
        fresh: !root.board.choosing
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    Told {
        text: root.board.phoneEnded
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    GridLayout {
        visible: root.board.codeShown
        columns: root.bodyWidth > 50 * Theme.textBody ? 2 : 1
        columnSpacing: Theme.gapPage
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        QrCode {
            visible: !root.board.forDesk
            matrix: root.board.qr
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("Code for the patient's phone. It can also be typed: %1").arg(root.board.typedCode)
        }
        ColumnLayout {
            spacing: Theme.gap
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignVCenter

            Words {
                text: root.board.forDesk ? qsTr("The code") : qsTr("To type instead")
                soft: true
                Layout.fillWidth: true
            }
            Words {
                objectName: "typedCode"
                text: root.board.typedCode
                font.pixelSize: Theme.textTitle
                font.family: Theme.codeFamily
                font.letterSpacing: 1
                Layout.fillWidth: true
            }
            Words {
                text: qsTr("and the hub's address")
                soft: true
                Layout.fillWidth: true
            }
            Words {
                objectName: "hubAddress"
                text: root.board.hubAddress
                font.pixelSize: Theme.textTitle
                font.family: Theme.codeFamily
                Layout.fillWidth: true
            }
            Words {
                text: root.board.timeLeft
                strong: true
                Layout.fillWidth: true
            }
        }
    }
    Words {
        objectName: "number"
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
            objectName: "makeCode"
            visible: root.board.choosing
            text: qsTr("Make a code")
            primary: true
            enabled: root.board.blocked.length === 0
            onClicked: root.board.start(step.passphrase, step.second)
        }
        ActButton {
            visible: root.board.choosing && root.board.replacing && root.board.oldLost
            text: qsTr("Only end the lost phone")
            tone: Theme.emergency
            barred: root.program.roles.phones
            onClicked: root.board.endPhone(step.passphrase)
        }
        ActButton {
            visible: root.board.comparing
            text: qsTr("Both show the same number")
            primary: true
            onClicked: root.board.confirm()
        }
        ActButton {
            visible: root.board.comparing
            text: qsTr("They differ: stop")
            tone: Theme.emergency
            onClicked: root.board.refuse()
        }
        ActButton { visible: root.board.codeShown; text: qsTr("Cancel"); onClicked: root.board.refuse() }
        ActButton {
            visible: root.board.ended
            text: qsTr("Make a new code")
            primary: true
            onClicked: root.board.again()
        }
        ActButton {
            visible: root.board.linked
            text: root.board.forDesk ? qsTr("To the desks") : qsTr("To the queue")
            primary: true
            onClicked: root.board.forDesk ? root.program.openDesks() : root.program.openQueue()
        }
    }
}
