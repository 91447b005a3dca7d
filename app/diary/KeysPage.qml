// The lock: a new passphrase, and the recovery code on paper.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program
    readonly property KeysBoard board: root.program.keys
    readonly property bool showing: root.board.code.length > 0 && !root.asking
    readonly property bool asking: root.board.asking
    readonly property bool resting: !root.showing && !root.asking
    readonly property bool working: root.board.working
    readonly property bool changedIt: root.board.outcome.length > 0
    // Where to go on when the work ends: stopped, refused or done.
    readonly property var next: root.board.codeProblem.length > 0 ? proof.field : root.board.newProblem.length > 0 ? fresh.field
                              : root.board.repeatProblem.length > 0 ? again.field : old.field
    onWorkingChanged: Qt.callLater(root.working ? halt.forceActiveFocus : root.next.forceActiveFocus)
    onChangedItChanged: {
        if (root.changedIt) {
            old.forget();
            fresh.forget();
            again.field.clear();
        }
    }

    Told {
        visible: root.working
        text: root.board.doing
        Layout.fillWidth: true
    }
    ActButton {
        id: halt

        visible: root.working
        text: qsTr("Stop")
        hint: qsTr("Nothing has been written yet.")
        onClicked: root.board.stop()
        Layout.fillWidth: true
    }
    Told {
        text: root.board.outcome
        Layout.fillWidth: true
    }
    FileDialog {
        id: place

        title: qsTr("Where to put the page")
        fileMode: FileDialog.SaveFile
        defaultSuffix: "pdf"
        nameFilters: [qsTr("A page to print (*.pdf)")]
        onAccepted: root.board.savePage(place.selectedFile)
    }
    CodeBack {
        visible: root.asking
        asked: root.board.askedText
        problem: root.board.askedProblem
        onReadBack: typed => root.board.readBack(typed)
        onShowAgain: root.board.showCode()
        Layout.fillWidth: true
    }
    Words {
        visible: root.showing
        text: qsTr("Write this down on paper. It is shown only now. Any code from before no longer works.")
        strong: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.showing
        text: root.board.code
        font.pixelSize: Theme.textLarge
        font.weight: Font.DemiBold
        horizontalAlignment: Text.AlignHCenter
        LayoutMirroring.enabled: false
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.showing
        primary: true
        text: qsTr("I have written it down")
        onClicked: root.board.askBack()
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.showing
        text: qsTr("Save it as a page to print")
        onClicked: place.open()
        Layout.fillWidth: true
    }
    Told {
        visible: root.showing && text.length > 0
        text: root.board.pageOutcome
        strong: false
        Layout.fillWidth: true
    }
    Heading {
        visible: root.resting
        text: qsTr("Recovery code")
        level: 2
        Layout.fillWidth: true
    }
    Words {
        visible: root.resting
        text: root.board.codeState
        Layout.fillWidth: true
    }
    Words {
        visible: root.resting && text.length > 0
        text: root.board.phoneHalf
        Layout.fillWidth: true
    }
    Words {
        visible: root.resting && text.length > 0
        text: root.board.codeUnread
        strong: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.resting
        text: qsTr("The code opens the diary if you lose your passphrase. Nobody else can help you then.")
        soft: true
        Layout.fillWidth: true
    }
    SecretField {
        id: proof

        visible: root.resting
        label: qsTr("Your passphrase, to make a code")
        problem: root.board.codeProblem
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.resting
        text: root.board.makeWord
        enabled: !root.working && proof.field.text.length > 0
        onClicked: { root.board.makeCode(proof.field.text); proof.forget(); }
        Layout.fillWidth: true
    }
    Heading {
        visible: root.resting
        text: qsTr("Change the passphrase")
        level: 2
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
    }
    SecretField {
        id: old

        visible: root.resting
        label: qsTr("Your passphrase now")
        problem: root.board.oldProblem
        Layout.fillWidth: true
    }
    SecretField {
        id: fresh

        visible: root.resting
        label: qsTr("The new one")
        judged: true
        problem: root.board.newProblem
        Layout.fillWidth: true
    }
    LineField {
        id: again

        visible: root.resting && !fresh.shown
        label: qsTr("The new one once more")
        secret: true
        problem: root.board.repeatProblem
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.resting
        text: qsTr("Change the passphrase")
        enabled: !root.working && old.field.text.length > 0 && fresh.field.text.length > 0
        onClicked: root.board.change(old.field.text, fresh.field.text, fresh.shown ? fresh.field.text : again.field.text)
        Layout.fillWidth: true
    }
}
