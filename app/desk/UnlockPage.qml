// The door: set up the vault, or open it.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

FocusScope {
    id: root

    required property DeskProgram program
    readonly property UnlockBoard board: root.program.unlocking

    readonly property bool working: root.board.working

    Component.onCompleted: passphrase.field.forceActiveFocus()
    onWorkingChanged: if (root.working) Qt.callLater(halt.forceActiveFocus)

    Flickable {
        id: area

        anchors.fill: parent
        contentHeight: Math.max(height, sheet.implicitHeight + 2 * Theme.gapPage)
        interactive: contentHeight > height

        ColumnLayout {
            id: sheet

            anchors.centerIn: parent
            width: Math.min(area.width - 2 * Theme.gapPage, 30 * Theme.textBody)
            spacing: Theme.gap

            Wordmark {}
            Heading {
                text: root.board.title
                Layout.fillWidth: true
            }
            Words {
                text: root.board.text
                soft: true
                Layout.fillWidth: true
            }
            Words {
                objectName: "onDoor"
                visible: root.program.alarm.onDoor.length > 0
                text: root.program.alarm.onDoor
                strong: true
                Layout.fillWidth: true
            }
            LineField {
                id: code

                objectName: "recoveryCode"
                visible: root.board.recovering
                label: qsTr("Recovery code from the paper")
                onAccepted: passphrase.field.forceActiveFocus()
                Layout.fillWidth: true
            }
            LineField {
                id: passphrase

                objectName: "passphrase"
                label: root.board.recovering ? qsTr("A new passphrase") : qsTr("Passphrase")
                secret: true
                problem: root.board.problem
                onAccepted: again.visible ? again.field.forceActiveFocus() : root.board.unlock(passphrase.field.text)
                Layout.fillWidth: true
            }
            LineField {
                id: again

                objectName: "again"
                visible: !root.board.vaultExists || root.board.recovering
                label: qsTr("Passphrase once more")
                secret: true
                onAccepted: act.clicked()
                Layout.fillWidth: true
            }
            ActButton {
                id: act

                objectName: "act"
                enabled: !root.working
                text: root.board.recovering ? qsTr("Set this passphrase and unlock") : root.board.vaultExists ? qsTr("Unlock") : qsTr("Set up")
                primary: true
                onClicked: root.board.recovering ? root.board.recover(code.field.text, passphrase.field.text, again.field.text)
                           : root.board.vaultExists ? root.board.unlock(passphrase.field.text)
                                                    : root.board.create(passphrase.field.text, again.field.text)
                Layout.fillWidth: true
            }
            Told {
                objectName: "doing"
                visible: root.working
                text: root.board.doing
                Layout.fillWidth: true
            }
            ActButton {
                id: halt

                objectName: "stop"
                visible: root.working
                text: qsTr("Stop")
                hint: qsTr("Nothing has been written yet.")
                onClicked: { root.board.stop(); passphrase.field.forceActiveFocus(); }
                Layout.fillWidth: true
            }
            ActButton {
                objectName: "useCode"
                visible: root.board.codeOffered
                text: root.board.recovering ? qsTr("I know the passphrase") : qsTr("I lost the passphrase")
                quiet: true
                onClicked: root.board.useCode(!root.board.recovering)
                Layout.fillWidth: true
            }
            ActButton {
                text: qsTr("Look around with invented patients")
                hint: qsTr("A clinic of its own that is gone when you lock it. The clinic's own vault stays shut.")
                quiet: true
                onClicked: root.board.openDemo()
                Layout.fillWidth: true
            }
            Choice {
                label: qsTr("Language")
                options: root.program.settings.languageNames
                current: root.program.settings.languages.indexOf(root.program.settings.language)
                onChosen: index => root.program.settings.language = root.program.settings.languages[index]
                Layout.fillWidth: true
                Layout.topMargin: Theme.gapLarge
            }
        }
    }
}
