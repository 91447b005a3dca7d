// About the diary: its version, whose work it is made with, and the licences of all of it.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Notices

PageBody {
    id: root

    required property DiaryProgram program

    Words {
        text: qsTr("Version %1").arg(root.program.notices.version)
        strong: true
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("The diary is made with the work of others. Here you see what it uses, and who made that. The texts of the licences are in English.")
        Layout.fillWidth: true
    }
    NoticeList {
        board: root.program.notices
        partsWord: qsTr("The parts")
        licencesWord: qsTr("The licences")
        hint: qsTr("Shows the text")
        onChosen: (licence) => root.program.openLicence(licence)
        Layout.fillWidth: true
    }
}
