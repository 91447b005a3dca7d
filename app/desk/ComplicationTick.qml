// A complication that can be ticked, and below its name what is meant by it.
//
// In   row
// Out  ticked
import QtQuick
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Column {
    id: root

    required property tickRow row
    signal ticked(bool on)

    bottomPadding: Theme.gapSmall

    TickBox {
        id: box

        width: root.width
        text: root.row.name
        checked: root.row.ticked
        Accessible.description: root.row.meaning
        onToggled: root.ticked(box.checked)
    }
    Words {
        leftPadding: box.leftPadding
        rightPadding: box.rightPadding
        width: root.width
        text: root.row.meaning
        small: true
        soft: true
        Accessible.ignored: true
    }
}
