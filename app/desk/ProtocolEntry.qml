// One instruction or rule: what, when, and the details.
import QtQuick
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Item {
    id: root

    required property protocolLine row
    readonly property real untilWidth: Math.min(until.implicitWidth, root.width * 0.4)

    implicitHeight: detail.y + detail.height + Theme.gapSmall

    Words {
        id: what

        anchors.left: parent.left
        y: Theme.gapSmall
        width: root.width - root.untilWidth - Theme.gap
        text: root.row.what
        strong: true
    }
    Words {
        id: until

        anchors.right: parent.right
        y: Theme.gapSmall
        width: root.untilWidth
        text: root.row.until
        horizontalAlignment: Text.AlignRight
    }
    Words {
        id: detail

        y: Theme.gapSmall + Math.max(what.height, until.height) + 1
        width: root.width
        text: root.row.detail
        soft: true
        small: true
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.hairline
        color: Theme.hair
    }
}
