// The day: what is usual, what to do now, what comes next, how it runs. One act: write it down.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program
    readonly property TodayBoard board: root.program.today
    property bool more: false  // the curves of the other symptoms are in sight

    foot: [
        ActButton {
            visible: root.board.replaced.length === 0
            primary: true
            text: root.board.writeWord
            onClicked: root.program.openEntry()
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.board.replaced.length > 0
            primary: true
            text: qsTr("Whom to call")
            onClicked: root.program.openCall()
            Layout.fillWidth: true
        }
    ]

    ReplacedLine {
        program: root.program
        Layout.fillWidth: true
    }
    AdviceCard {
        visible: root.board.adviceTitle.length > 0
        board: root.board
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.unread.length > 0
        text: root.board.unread
        onClicked: root.program.openNotes()
        Layout.fillWidth: true
    }
    Told {
        visible: root.board.stuck && root.board.outlook.length > 0
        text: root.board.outlook
        Layout.fillWidth: true
    }
    Words {
        text: root.board.usual
        strong: true
        Layout.fillWidth: true
    }
    Words {
        text: root.board.usualGround
        small: true
        soft: true
        Layout.fillWidth: true
        Layout.topMargin: -Theme.gapSmall
    }
    BellCard {
        visible: root.board.replaced.length === 0 && root.program.reminders.card.length > 0
        board: root.program.reminders
        Layout.fillWidth: true
    }
    Heading {
        visible: root.board.due.length > 0
        text: qsTr("Now")
        level: 2
        Layout.fillWidth: true
    }
    Repeater {
        model: root.board.due

        DueCard {
            board: root.board
            program: root.program
            Layout.fillWidth: true
        }
    }
    Heading {
        visible: root.board.answered.length > 0
        text: qsTr("Answered today")
        level: 2
        Layout.fillWidth: true
    }
    Repeater {
        model: root.board.answered

        AnsweredLine {
            board: root.board
            Layout.fillWidth: true
        }
    }
    Heading {
        visible: root.board.next.length > 0
        text: qsTr("Next")
        level: 2
        Layout.fillWidth: true
    }
    Repeater {
        model: root.board.next

        PlanLine {
            Layout.fillWidth: true
        }
    }
    Heading {
        text: qsTr("Your course")
        level: 2
        Layout.fillWidth: true
    }
    CurveGrid {
        pictures: root.board.curves
        room: root.bodyWidth
        Layout.fillWidth: true
    }
    CurveGrid {
        visible: root.more
        pictures: root.more ? root.board.moreCurves : []
        room: root.bodyWidth
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.moreThere
        quiet: true
        text: root.more ? qsTr("Fewer curves") : qsTr("More curves")
        onClicked: root.more = !root.more
        Layout.fillWidth: true
    }
    Words {
        visible: text.length > 0
        text: root.board.sent
        soft: true
        Layout.fillWidth: true
    }
    Words {
        visible: !root.board.stuck && root.board.outlook.length > 0
        text: root.board.outlook
        strong: true
        Layout.fillWidth: true
        Layout.topMargin: -Theme.gapSmall
    }
    Heading {
        visible: root.board.rules.length > 0
        text: qsTr("To keep today")
        level: 2
        Layout.fillWidth: true
    }
    Repeater {
        model: root.board.rules

        PlanLine {
            Layout.fillWidth: true
        }
    }
    Words {
        text: root.board.followUp
        soft: true
        Layout.fillWidth: true
    }
    Words {
        visible: text.length > 0
        text: root.board.visitMoved
        strong: true
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("What I wrote")
        onClicked: root.program.openHistory()
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Notes with the clinic")
        onClicked: root.program.openNotes()
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Settings")
        onClicked: root.program.openSettings()
        Layout.fillWidth: true
    }
}
