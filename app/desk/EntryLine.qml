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

        // In one line where there is room for it. Nothing is wrapped there: what was once wrapped keeps its height.
        GridLayout {
            id: head

            readonly property bool single: root.width >= day.implicitWidth + when.implicitWidth + opened.implicitWidth + 4 * Theme.gap

            columns: head.single ? 3 : 1
            columnSpacing: Theme.gap
            rowSpacing: 0
            Layout.fillWidth: true

            Words {
                id: day

                text: root.row.day
                strong: true
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
            Words {
                id: when

                text: root.row.when
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
            Words {
                id: opened

                text: root.row.opened
                small: true
                soft: root.row.isOpened
                strong: !root.row.isOpened
                wrapMode: head.single ? Text.NoWrap : Text.Wrap
                horizontalAlignment: head.single ? Text.AlignRight : Text.AlignLeft
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
