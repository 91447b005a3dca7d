// The text of one licence.
import QtQuick
import QtQuick.Layouts
import Ebbline.Diary
import Ebbline.Notices

PageBody {
    id: root

    required property DiaryProgram program

    LicenceText {
        board: root.program.notices
        Layout.fillWidth: true
    }
}
