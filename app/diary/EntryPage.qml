// Writing an entry: one question at a time, with where one is.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program
    readonly property EntryBoard board: root.program.entry
    readonly property bool asking: root.board.moment.asking
    readonly property bool scoring: !root.asking && root.board.step === EntryBoard.Score
    readonly property bool signing: !root.asking && root.board.step === EntryBoard.Signs
    readonly property bool resting: !root.asking && root.board.step === EntryBoard.Rest

    topOn: root.board.progress
    titleFolded: root.scoring && scores.flat
    alert: rest.noteAlert
    foot: [
        ActButton {
            visible: root.scoring
            primary: true
            text: root.board.nextWord
            onClicked: root.board.next()
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.resting
            primary: true
            text: qsTr("Save")
            onClicked: root.board.save()
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.resting && !root.board.amending
            text: qsTr("Save, then add photographs")
            onClicked: root.program.saveThenPhoto()
            Layout.fillWidth: true
        }
    ]

    ReplacedLine {
        program: root.program
        Layout.fillWidth: true
    }
    Rectangle {
        implicitHeight: Theme.gapHair
        radius: height / 2
        color: Theme.hair
        Layout.fillWidth: true
        Accessible.role: Accessible.ProgressBar
        Accessible.name: qsTr("Question %1").arg(root.board.progress)

        Rectangle {
            anchors.left: parent.left
            height: parent.height
            width: parent.width * root.board.share
            radius: height / 2
            color: Theme.tide
        }
    }
    Told {
        visible: root.asking
        text: root.board.moment.askText
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.asking
        text: qsTr("About then")
        hint: root.board.moment.text
        onClicked: root.board.moment.keepThen()
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.asking
        text: qsTr("About now")
        hint: qsTr("Goes through the questions again")
        onClicked: root.board.moment.useNow()
        Layout.fillWidth: true
    }
    MomentLine {
        moment: root.board.moment
        offered: root.resting || root.board.moment.choosing
        Layout.fillWidth: true
    }
    Heading {
        visible: !root.asking
        // In large letters on a small phone a long question leaves room for its numbers.
        level: root.bodyWidth < 14 * Theme.textBody ? 2 : 1
        text: root.board.question
        Layout.fillWidth: true
    }
    Told {
        text: root.board.problem
        alarm: true
        Layout.fillWidth: true
    }
    ScoreStep {
        id: scores

        visible: root.scoring
        board: root.board
        // What is above it, as it stands now.
        room: root.viewHeight - root.bodyTop - scores.y
        Layout.fillWidth: true
    }
    SignsStep {
        visible: root.signing
        board: root.board
        Layout.fillWidth: true
    }
    RestStep {
        id: rest

        visible: root.resting
        board: root.board
        Layout.fillWidth: true
    }
}
