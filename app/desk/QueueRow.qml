// One course of the queue. The form grows with the urgency: plain words, an outlined chip, a bar
// across the row, and for an emergency the page itself.
//
// In   row, chosen (the current one), listFocused, pageHeight, closingBarred
// Out  picked, opened, taken, called, closing
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Item {
    id: root

    required property queueRow row
    required property int index
    property bool chosen: false
    property bool listFocused: false
    property real pageHeight: 600
    property string closingBarred
    readonly property bool emergency: root.row.urgency === 1
    readonly property bool barred: root.row.urgency === 2
    signal picked
    signal opened
    signal taken
    signal called
    signal closing

    implicitHeight: frame.y + Math.max(body.implicitHeight, root.emergency ? root.pageHeight * 0.55 : 0)
    Accessible.role: Accessible.ListItem
    Accessible.name: root.row.spoken
    Accessible.selectable: true
    Accessible.selected: root.chosen
    Accessible.onPressAction: root.opened()

    Heading {
        id: heading

        width: parent.width
        topPadding: Theme.gap
        bottomPadding: Theme.gapSmall
        visible: root.row.heading.length > 0
        level: 2
        text: root.row.heading
    }
    Rectangle {
        id: frame

        y: heading.visible ? heading.height : 0
        width: parent.width
        height: parent.height - y
        radius: Theme.corner
        color: root.emergency ? Theme.emergencyFill : Theme.card
        border.width: Theme.hairline
        border.color: root.emergency ? Theme.emergency : root.barred ? Theme.callNow : Theme.hair
    }
    Rectangle {
        anchors.fill: frame
        anchors.margins: -1
        radius: Theme.corner
        color: "transparent"
        visible: root.chosen && root.listFocused
        border.width: Theme.focusWidth + 1
        border.color: root.emergency ? Theme.ink : Theme.focus
    }
    MouseArea {
        anchors.fill: frame
        onClicked: root.picked()
        onDoubleClicked: root.opened()
    }
    // Placed by hand: a layout around it could leave the head of a new row without a width.
    Item {
        id: body

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: frame.verticalCenter
        implicitHeight: reasons.y + reasons.implicitHeight + Theme.gapSmall + Theme.gapHair
        height: body.implicitHeight

        QueueRowHead {
            id: head

            width: body.width
            row: root.row
        }
        GridLayout {
            id: reasons

            x: Theme.gap
            y: head.height + (root.barred ? Theme.gapSmall : 0)
            width: body.width - 2 * Theme.gap
            columns: root.width > 52 * Theme.textBody ? 3 : 1
            columnSpacing: Theme.gapLarge
            rowSpacing: Theme.gapSmall

            QueueReason {
                row: root.row
                Layout.fillWidth: true
            }
            RowSpark {
                visible: !root.emergency && !root.row.silent
                row: root.row
            }
            QueueActs {
                row: root.row
                closingBarred: root.closingBarred
                onOpened: root.opened()
                onTaken: root.taken()
                onCalled: root.called()
                onClosing: root.closing()
                Layout.fillWidth: root.width <= 52 * Theme.textBody
                Layout.preferredWidth: natural
                Layout.alignment: Qt.AlignVCenter
            }
        }
    }
}
