// One entry as the patient gave it.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Item {
    id: root

    required property entryRow row
    property bool lighted: false

    implicitHeight: inside.implicitHeight + 2 * Theme.gapSmall
    Accessible.role: Accessible.ListItem
    Accessible.name: root.row.spoken
    Accessible.focusable: true

    // The page follows the focus.
    Timer {
        interval: 0
        running: root.lighted
        onTriggered: root.forceActiveFocus(Qt.OtherFocusReason)
    }
    Rectangle {
        anchors.fill: parent
        visible: root.lighted
        radius: Theme.corner / 2
        color: Theme.chosen
        border.width: Theme.focusWidth
        border.color: Theme.tide
    }
    Rectangle {
        width: parent.width
        height: Theme.hairline
        color: Theme.hair
    }
    ColumnLayout {
        id: inside

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.leftMargin: root.lighted ? Theme.gapSmall : 0
        anchors.rightMargin: root.lighted ? Theme.gapSmall : 0
        anchors.verticalCenter: parent.verticalCenter
        spacing: 2

        RowLayout {
            spacing: Theme.gap
            Layout.fillWidth: true

            Words {
                text: root.row.day
                strong: true
                Accessible.ignored: true
            }
            Words {
                text: root.row.when
                Accessible.ignored: true
            }
            Words {
                text: root.row.opened
                small: true
                soft: root.row.isOpened
                strong: !root.row.isOpened
                horizontalAlignment: Text.AlignRight
                Layout.fillWidth: true
                Accessible.ignored: true
            }
        }
        Words {
            visible: text.length > 0
            text: root.row.signs
            strong: true
            color: Theme.callNow
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        Words {
            visible: text.length > 0
            text: root.row.scores
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        Words {
            visible: root.row.note.length > 0
            text: "“" + root.row.note + "”"
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        Words {
            visible: text.length > 0
            text: root.row.photos
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        Words {
            visible: text.length > 0
            text: root.row.marks
            small: true
            soft: true
            Layout.fillWidth: true
            Accessible.ignored: true
        }
    }
}
