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

    Heading {
        visible: root.board.clinicName.length > 0
        text: root.board.clinicName
        level: 2
        Layout.fillWidth: true
    }
    Words {
        text: root.board.doNow
        strong: true
        Layout.fillWidth: true
    }
    CallList {
        board: root.board
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
