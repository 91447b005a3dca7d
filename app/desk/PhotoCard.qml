// One photograph in the strip: the picture, or in words why there is none, and when it was taken.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

T.AbstractButton {
    id: root

    required property photoRow row
    required property int index
    property PhotoPictures pictures
    property bool current: false
    signal opened()

    implicitWidth: 10 * Theme.textBody
    implicitHeight: inside.implicitHeight + 2 * Theme.gapSmall
    focusPolicy: Qt.NoFocus
    onClicked: if (root.row.shown) root.opened()
    Accessible.role: root.row.shown ? Accessible.Button : Accessible.StaticText
    Accessible.name: root.row.spoken
    Accessible.onPressAction: root.clicked()

    background: Rectangle {
        radius: Theme.corner
        color: root.hovered && root.row.shown ? Theme.chosen : "transparent"

        FocusRing {
            anchors.margins: 0  // within the strip, which clips
            shown: root.current
        }
    }
    contentItem: Item {
        ColumnLayout {
            id: inside

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.top: parent.top
            anchors.margins: Theme.gapSmall
            spacing: 2

            Rectangle {
                implicitHeight: Math.round(root.implicitWidth * 1.1)
                color: Theme.chosen
                border.width: root.row.shown ? 0 : Theme.hairline
                border.color: Theme.line
                Layout.fillWidth: true

                PhotoThumb {
                    anchors.fill: parent
                    visible: root.row.shown
                    pictures: root.pictures
                    photo: root.row.shown ? root.row.key : ""
                }
                Words {
                    anchors.centerIn: parent
                    width: parent.width - 2 * Theme.gapSmall
                    visible: !root.row.shown
                    text: root.row.state
                    small: true
                    horizontalAlignment: Text.AlignHCenter
                    Accessible.ignored: true
                }
            }
            Words {
                text: root.row.day
                strong: true
                Layout.fillWidth: true
                Accessible.ignored: true
            }
            Words {
                text: root.row.view
                Layout.fillWidth: true
                Accessible.ignored: true
            }
            Words {
                text: root.row.when
                small: true
                soft: true
                Layout.fillWidth: true
                Accessible.ignored: true
            }
            Words {
                visible: text.length > 0
                text: root.row.beside
                small: true
                soft: true
                Layout.fillWidth: true
                Accessible.ignored: true
            }
        }
    }
}
