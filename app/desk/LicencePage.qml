// The text of one licence.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Notices
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program

    title: root.program.notices.chosen
    actions: [
        ActButton {
            text: qsTr("Back to all parts")
            onClicked: root.program.openNotices()
        }
    ]

    LicenceText {
        board: root.program.notices
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
}
