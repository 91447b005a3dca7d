// What leaves this phone, taking it along, and deleting it.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program
    readonly property MineBoard board: root.program.mine

    FolderDialog {
        id: place

        title: qsTr("Where to put your data")
        onAccepted: root.board.takeAlong(place.selectedFolder)
    }
    Heading {
        text: qsTr("What leaves this phone")
        level: 2
        Layout.fillWidth: true
    }
    LeavesList {
        Layout.fillWidth: true
    }
    Heading {
        text: qsTr("Take it along")
        level: 2
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
    }
    Words {
        text: qsTr("All that you wrote, as a page to print (PDF), as tables (CSV) and for other health programs (FHIR), and your photographs. It works without a network.")
        Layout.fillWidth: true
    }
    SecretField {
        id: proof

        label: qsTr("Your passphrase, to save it all")
        problem: root.board.takeProblem
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Save my data to a folder")
        enabled: proof.field.text.length > 0
        onClicked: {
            const hers = root.board.allowTaking(proof.field.text);
            proof.forget();
            if (hers)
                place.open();
        }
        Layout.fillWidth: true
    }
    Told {
        text: root.board.outcome
        strong: false
        Layout.fillWidth: true
    }
    Heading {
        text: qsTr("Delete the diary")
        level: 2
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
    }
    Words {
        text: qsTr("This takes the diary off this phone. The clinic keeps what it has: ask the clinic if you want that gone too. No reminder and no warning comes after it.")
        Layout.fillWidth: true
    }
    Words {
        visible: text.length > 0
        text: root.board.again
        Layout.fillWidth: true
    }
    ActButton {
        visible: !root.board.confirming
        tone: Theme.callNow
        text: qsTr("Delete the diary …")
        onClicked: root.board.askDelete()
        Layout.fillWidth: true
    }
    Told {
        visible: root.board.confirming
        text: root.board.loss
        Layout.fillWidth: true
    }
    Told {
        text: root.board.problem
        alarm: true
        Layout.fillWidth: true
    }
    SecretField {
        id: last

        visible: root.board.confirming
        label: qsTr("Your passphrase, to delete it all")
        problem: root.board.eraseProblem
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.confirming
        primary: true
        text: qsTr("Keep it")
        onClicked: { last.forget(); root.board.keepAll(); }
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.confirming
        tone: Theme.callNow
        text: qsTr("Delete it now. There is no way back.")
        enabled: last.field.text.length > 0
        onClicked: root.board.deleteAll(last.field.text)
        Layout.fillWidth: true
    }
}
