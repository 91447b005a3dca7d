// That the desk locks soon, over whatever is open, a panel too.
//
// In   program
import QtQuick
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

T.Popup {
    id: root

    required property DeskProgram program

    parent: T.Overlay.overlay
    x: parent ? (parent.width - width) / 2 : 0
    y: parent ? parent.height - height - Theme.gap : 0
    z: 1
    width: Math.min(parent ? parent.width - 2 * Theme.gap : 400, 40 * Theme.textBody)
    height: notice.implicitHeight
    closePolicy: T.Popup.NoAutoClose
    visible: root.program.idle.ending
    contentItem: IdleNotice {
        id: notice

        lock: root.program.idle
        mostHeight: (root.parent ? root.parent.height : 400) * 0.45
        text: qsTr("Nobody has used the desk for a while. It locks in half a minute. What was begun is kept.")
        radius: Theme.corner
    }
}
