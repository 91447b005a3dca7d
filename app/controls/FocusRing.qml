// The mark around what has the keyboard.
import QtQuick
import Ebbline.Theme

Rectangle {
    id: ring

    property bool shown: false

    anchors.fill: parent
    anchors.margins: -3
    visible: ring.shown
    color: "transparent"
    radius: Theme.corner + 3
    border.width: Theme.focusWidth
    border.color: Theme.focus
}
