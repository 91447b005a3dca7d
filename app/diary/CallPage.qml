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
    Words {
        text: qsTr("Call the emergency number at once if you can not breathe or swallow, if your neck or tongue swells fast, if you faint, if your sight goes, or if your face droops and an arm is weak.")
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("Call your clinic the same day for fever of 38 °C or more, fluid like pus, one side that keeps swelling, pain that comes back, or skin that turns white, grey or cold.")
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("This diary is no doctor and no medical device. It does not know everything.")
        soft: true
        Layout.fillWidth: true
    }
}
