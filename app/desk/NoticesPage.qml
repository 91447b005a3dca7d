// About the desk: its version, whose work it is made with, and the licences of all of it.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Notices
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program

    title: qsTr("About Ebbline")
    subtitle: qsTr("Version %1").arg(root.program.notices.version)
    actions: [
        ActButton {
            text: qsTr("Back to the settings")
            onClicked: root.program.openSettings()
        }
    ]

    Words {
        text: qsTr("Ebbline is free software under the GPL 3. It is not a certified medical device, and replaces no examination and no emergency service.")
        Layout.fillWidth: true
        Layout.maximumWidth: 64 * Theme.textBody
    }
    Words {
        text: qsTr("The desk is made with the work of others. Here is what it uses and who made that. The texts of the licences are in English.")
        Layout.fillWidth: true
        Layout.maximumWidth: 64 * Theme.textBody
    }
    NoticeList {
        board: root.program.notices
        partsWord: qsTr("The parts")
        licencesWord: qsTr("The licences")
        hint: qsTr("Shows the text")
        onChosen: licence => root.program.openLicence(licence)
        Layout.fillWidth: true
        Layout.maximumWidth: 64 * Theme.textBody
    }
}
