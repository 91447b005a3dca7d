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
    readonly property bool asking: root.board.asking
    readonly property bool showing: root.board.code.length > 0 && !root.asking
    readonly property bool resting: !root.showing && !root.asking
    readonly property bool mayAct: !root.board.busy && proof.field.text.length > 0

    title: qsTr("Backup and keys")
    subtitle: qsTr("A computer can be stolen, fail, or burn. What is not in a backup elsewhere is lost then.")
    actions: [
        ActButton {
            text: qsTr("Back to the clinic")
            onClicked: root.program.openClinic()
        }
    ]

    Told {
        visible: root.board.busy
        text: root.board.doing
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    Told {
        text: root.board.outcome
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    Told {
        text: root.board.problem
        alarm: true
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
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
            onClicked: root.board.askBack()
        }
    }
    CodeBack {
        visible: root.asking
        asked: root.board.askedText
        problem: root.board.askedProblem
        onReadBack: typed => root.board.readBack(typed)
        onShowAgain: root.board.showCode()
        Layout.fillWidth: true
        Layout.maximumWidth: 30 * Theme.textBody
    }
    LineField {
        id: proof

        objectName: "proof"
        visible: root.resting
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
    Words {
        objectName: "lastBackup"
        visible: !root.showing
        text: root.board.lastBackup
        strong: root.board.overdue.length > 0
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    Words {
        objectName: "overdueWhy"
        visible: text.length > 0 && !root.showing
        text: root.board.overdueWhy
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    KeepAct {
        visible: root.resting
        title: qsTr("Backup")
        barred: root.program.roles.keeping
        text: qsTr("One encrypted file. Put it on another medium, in another place, at least once a week; try it out twice a year.")
        act: qsTr("Make a backup")
        primary: true
        mayAct: root.mayAct
        onActed: root.board.backUp(proof.field.text)
    }
    KeepAct {
        visible: root.resting
        title: qsTr("Check")
        text: qsTr("Reads everything, and whether each thing is where it was written.")
        act: qsTr("Check this vault")
        mayAct: root.mayAct
        onActed: root.board.check(proof.field.text)
    }
    KeepAct {
        visible: root.resting
        title: qsTr("Recovery code")
        barred: root.program.roles.keeping
        text: root.board.codeState
        act: qsTr("Make a new code")
        mayAct: root.mayAct
        onActed: root.board.makeCode(proof.field.text)
    }
    KeepAct {
        visible: root.resting
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
