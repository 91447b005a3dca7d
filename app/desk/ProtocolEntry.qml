// One instruction or rule: what, when, and the details.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Item {
    id: root

    required property protocolLine row

    implicitHeight: inside.implicitHeight + 2 * Theme.gapSmall

    ColumnLayout {
        id: inside

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        spacing: 1

        RowLayout {
            spacing: Theme.gap
            Layout.fillWidth: true

            Words {
                text: root.row.what
                strong: true
                Layout.fillWidth: true
            }
            Words {
                text: root.row.until
                horizontalAlignment: Text.AlignRight
                Layout.maximumWidth: root.width * 0.4
                Layout.alignment: Qt.AlignTop
            }
        }
        Words {
            text: root.row.detail
            soft: true
            small: true
            Layout.fillWidth: true
        }
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.hairline
        color: Theme.hair
    }
}
