// Making the diary with a passphrase, or opening it. Help stays in reach without it.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program
    readonly property LockBoard board: root.program.locking

    readonly property bool recovering: root.board.recovering
    readonly property bool drawn: root.board.drawn.length > 0
    readonly property bool setting: root.board.fresh || root.recovering
    // What can be read on the screen needs no second typing.
    readonly property var repeated: secret.shown ? secret.field : again.field
    readonly property bool working: root.board.working
    onRecoveringChanged: secret.forget()
    // Where to go on when the work ends without a diary: stopped, or refused.
    readonly property var next: root.drawn ? box.paperField : root.board.codeProblem.length > 0 ? code.field : secret.field
    onWorkingChanged: Qt.callLater(root.working ? halt.forceActiveFocus : root.next.forceActiveFocus)

    foot: [
        Told {
            visible: root.working
            text: root.board.doing
            Layout.fillWidth: true
        },
        ActButton {
            id: halt

            visible: root.working
            text: qsTr("Stop")
            hint: qsTr("Nothing has been written yet.")
            onClicked: root.board.stop()
            Layout.fillWidth: true
        },
        ActButton {
            visible: !root.recovering && !root.drawn
            primary: true
            enabled: !root.working
            text: root.board.fresh ? qsTr("Make my diary") : qsTr("Open my diary")
            onClicked: root.board.fresh ? root.board.create(secret.field.text, root.repeated.text) : root.board.unlock(secret.field.text)
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.recovering
            primary: true
            enabled: !root.working
            text: qsTr("Set this passphrase")
            onClicked: root.board.recover(code.field.text, secret.field.text, root.repeated.text)
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.drawn && !root.board.asking
            primary: true
            text: qsTr("It is on paper")
            onClicked: root.board.askBack()
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.board.asking
            primary: true
            enabled: !root.working
            text: qsTr("Make my diary")
            onClicked: root.board.createDrawn(box.typed)
            Layout.fillWidth: true
        }
    ]

    Choice {
        visible: root.board.fresh
        label: qsTr("Language")
        options: root.program.settings.languageNames
        current: root.program.settings.language
        onChosen: (index) => root.program.settings.language = index
        Layout.fillWidth: true
    }
    Heading {
        text: root.board.fresh ? qsTr("A diary that only you can open")
                               : root.recovering ? qsTr("Open it with your code") : qsTr("Your diary is locked")
        Layout.fillWidth: true
    }
    Words {
        visible: root.board.fresh
        text: qsTr("Choose a passphrase. It locks the diary on this phone. Nobody can reset it, not even your clinic. Later, make a recovery code under Settings.")
        Layout.fillWidth: true
    }
    LineField {
        id: code

        visible: root.recovering
        label: qsTr("Recovery code from your paper")
        problem: root.board.codeProblem
        Layout.fillWidth: true
    }
    DrawnBox {
        id: box

        visible: root.drawn
        board: root.board
        Layout.fillWidth: true
    }
    SecretField {
        id: secret

        visible: !root.drawn
        label: root.recovering ? qsTr("A new passphrase") : qsTr("Passphrase")
        judged: root.setting
        problem: root.board.problem
        onAccepted: {
            if (!root.setting)
                root.board.unlock(secret.field.text);
            else if (secret.shown && root.recovering)
                root.board.recover(code.field.text, secret.field.text, secret.field.text);
            else if (secret.shown)
                root.board.create(secret.field.text, secret.field.text);
        }
        Layout.fillWidth: true
    }
    LineField {
        id: again

        visible: root.setting && !root.drawn && !secret.shown
        label: qsTr("The same once more")
        secret: true
        problem: root.board.repeatProblem
        onAccepted: root.recovering ? root.board.recover(code.field.text, secret.field.text, again.field.text)
                                    : root.board.create(secret.field.text, again.field.text)
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.fresh && !root.drawn
        text: qsTr("Draw one for me")
        hint: qsTr("Letters and digits by chance, for you to keep on paper")
        onClicked: root.board.draw()
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.codeOffered
        quiet: true
        text: root.recovering ? qsTr("I know my passphrase") : qsTr("I lost my passphrase")
        onClicked: root.board.useCode(!root.recovering)
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.lostOffered && root.board.bothLost.length === 0
        quiet: true
        text: root.recovering ? qsTr("I lost both") : qsTr("I lost my passphrase")
        onClicked: root.board.tellLost()
        Layout.fillWidth: true
    }
    Told {
        text: root.board.bothLost
        strong: false
        Layout.fillWidth: true
    }
    Card {
        visible: root.board.fresh
        implicitHeight: leaves.implicitHeight + 2 * Theme.gap
        Layout.fillWidth: true

        Column {
            id: leaves

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.top: parent.top
            anchors.margins: Theme.gap
            spacing: Theme.gapSmall

            Words {
                text: qsTr("What leaves this phone")
                strong: true
                width: leaves.width
            }
            LeavesList {
                width: leaves.width
            }
        }
    }
    Words {
        visible: !root.board.fresh
        text: qsTr("If you are worried, do not look for the passphrase. Touch “I need help”.")
        soft: true
        Layout.fillWidth: true
    }
}
