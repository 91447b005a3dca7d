// Whom to call: in reach from every page, locked or not.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program
    readonly property WarningBoard board: root.program.warning
    // As on the page of a warning: the first number stays in sight.
    readonly property bool numberStays: root.board.loud && root.board.calls.length > 0

    footStays: root.numberStays
    foot: [
        CallButton {
            visible: root.numberStays
            board: root.board
            line: root.numberStays ? root.board.calls[0] : ({ title: "", number: "" })
            primary: true
            tone: root.board.emergency ? Theme.emergency : Theme.callNow
            brief: true
            Layout.fillWidth: true
        }
    ]

    Heading {
        visible: root.board.clinicName.length > 0
        text: root.board.clinicName
        level: 2
        Layout.fillWidth: true
    }
    Rectangle {
        // A warning that nobody has read, over a lock: as urgent as on its own page, and without what was found.
        visible: root.board.loud
        color: root.board.emergency ? Theme.emergencyFill : Theme.callNowFill
        radius: Theme.corner
        implicitHeight: headline.implicitHeight + 2 * Theme.gap
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
    CallList {
        board: root.board
        from: root.numberStays ? 1 : 0
        tone: root.board.loud && !root.board.emergency ? Theme.callNow : Theme.tide
        Layout.fillWidth: true
    }
    Words {
        text: root.board.callHint
        Layout.fillWidth: true
    }
    Words {
        visible: root.board.loud
        text: root.board.meaning
        Layout.fillWidth: true
    }
    SignList {
        title: qsTr("Call the emergency number at once if one of these is true")
        lines: root.board.emergencySigns
        Layout.fillWidth: true
    }
    SignList {
        title: qsTr("Call your clinic the same day if one of these is true")
        lines: root.board.callSigns
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("This diary is no doctor and no medical device. It does not know everything.")
        soft: true
        Layout.fillWidth: true
    }
}
