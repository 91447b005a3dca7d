// What keeps this desk's vault: backup, check, recovery code, passphrase.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property KeepBoard board: root.program.keep
    readonly property bool showing: root.board.code.length > 0
    readonly property bool mayAct: !root.board.busy && proof.field.text.length > 0

    title: qsTr("Backup and keys")
    subtitle: qsTr("A computer can be stolen, fail, or burn. What is not in a backup elsewhere is lost then.")
    actions: [
        ActButton {
            text: qsTr("Back to the clinic")
            onClicked: root.program.openClinic()
        }
    ]

    Words {
        visible: root.board.busy
        text: root.board.doing
        strong: true
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
        Accessible.role: Accessible.AlertMessage
    }
    Words {
        visible: root.board.outcome.length > 0
        text: root.board.outcome
        strong: true
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
        Accessible.role: Accessible.AlertMessage
    }
    Words {
        visible: root.board.problem.length > 0
        text: root.board.problem
        strong: true
        color: Theme.callNow
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
        Accessible.role: Accessible.AlertMessage
    }
    ColumnLayout {
        visible: root.showing
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody

        Words {
            text: qsTr("Write this down on paper. It is shown only now. Any code from before no longer works.")
            strong: true
            Layout.fillWidth: true
        }
        Words {
            text: root.board.code
            font.pixelSize: Theme.textTitle
            font.family: Theme.codeFamily
            LayoutMirroring.enabled: false
            Layout.fillWidth: true
        }
        ActButton {
            text: qsTr("It is written down")
            primary: true
            onClicked: root.board.hideCode()
        }
    }
    LineField {
        id: proof

        objectName: "proof"
        visible: !root.showing
        label: qsTr("Passphrase of this desk, for each of these")
        secret: true
        Layout.fillWidth: true
        Layout.maximumWidth: 30 * Theme.textBody
    }
    Words {
        visible: root.program.roles.keeping.length > 0
        text: root.program.roles.keeping
        soft: true
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    KeepAct {
        visible: !root.showing
        title: qsTr("Backup")
        barred: root.program.roles.keeping
        text: qsTr("One encrypted file. Put it on another medium, in another place, at least once a week; try it out twice a year.")
        act: qsTr("Make a backup")
        primary: true
        mayAct: root.mayAct
        onActed: root.board.backUp(proof.field.text)
    }
    KeepAct {
        visible: !root.showing
        title: qsTr("Check")
        text: qsTr("Reads everything, and whether each thing is where it was written.")
        act: qsTr("Check this vault")
        mayAct: root.mayAct
        onActed: root.board.check(proof.field.text)
    }
    KeepAct {
        visible: !root.showing
        title: qsTr("Recovery code")
        barred: root.program.roles.keeping
        text: root.board.codeState
        act: qsTr("Make a new code")
        mayAct: root.mayAct
        onActed: root.board.makeCode(proof.field.text)
    }
    KeepAct {
        visible: !root.showing
        title: qsTr("A new passphrase")
        barred: root.program.roles.keeping
        act: qsTr("Change the passphrase")
        mayAct: root.mayAct && fresh.field.text.length > 0
        onActed: root.board.changePassphrase(proof.field.text, fresh.field.text, again.field.text)

        LineField {
            id: fresh

            label: qsTr("The new one")
            secret: true
            Layout.fillWidth: true
            Layout.maximumWidth: 30 * Theme.textBody
        }
        LineField {
            id: again

            label: qsTr("The new one once more")
            secret: true
            Layout.fillWidth: true
            Layout.maximumWidth: 30 * Theme.textBody
        }
    }
}
