// A warning takes the whole page: what to do, whom to call, then what it can mean, and why. The first number to call stays in sight;
// who has read it all finds the way on at the end.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program
    readonly property WarningBoard board: root.program.warning
    readonly property color tone: root.board.emergency ? Theme.emergency : Theme.callNow

    footStays: true
    foot: [
        CallButton {
            board: root.board
            line: root.board.calls[0]
            primary: true
            tone: root.tone
            brief: true
            Layout.fillWidth: true
        }
    ]

    Rectangle {
        color: root.board.emergency ? Theme.emergencyFill : Theme.callNowFill
        radius: Theme.corner
        implicitHeight: headline.implicitHeight + 2 * Theme.gapLarge
        Layout.fillWidth: true

        Heading {
            id: headline

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            anchors.margins: Theme.gap
            text: root.board.title
            color: Theme.inkOnAlarm
            Accessible.role: Accessible.AlertMessage
        }
    }
    Words {
        text: root.board.doNow
        strong: true
        Layout.fillWidth: true
    }
    Words {
        text: root.board.unsaved
        visible: text !== ""
        strong: true
        Layout.fillWidth: true
    }
    // By the emergency number: for an emergency that is the first, in the foot; else the last of the list.
    Words {
        visible: root.board.emergency
        text: root.board.callHint
        small: true
        Layout.fillWidth: true
    }
    CallList {
        visible: root.board.calls.length > from
        board: root.board
        tone: root.tone
        from: 1
        Layout.fillWidth: true
    }
    Words {
        visible: !root.board.emergency
        text: root.board.callHint
        small: true
        Layout.fillWidth: true
    }
    Heading {
        text: qsTr("What this can mean")
        level: 2
        Layout.fillWidth: true
    }
    Words {
        text: root.board.meaning
        Layout.fillWidth: true
    }
    Heading {
        visible: root.board.reason.length > 0
        text: qsTr("Why")
        level: 2
        Layout.fillWidth: true
    }
    Words {
        visible: root.board.reason.length > 0
        text: root.board.reason
        Layout.fillWidth: true
    }
    Words {
        text: root.board.sentState
        visible: text !== ""
        soft: true
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("I have read this")
        hint: root.board.readHint
        onClicked: root.board.confirm()
        Layout.fillWidth: true
    }
}
