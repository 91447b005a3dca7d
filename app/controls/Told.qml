// A line that tells something that has just happened, or that stands in the way: a screen reader says it at once.
// Gone while there is nothing to tell; whoever hides it for another reason says that as well.
import QtQuick
import Ebbline.Theme

Words {
    id: told

    property bool alarm: false  // something is wrong, or presses

    visible: told.text.length > 0
    strong: !told.small && !told.soft
    color: told.alarm ? Theme.callNow : told.soft ? Theme.inkSoft : Theme.ink
    Accessible.role: Accessible.AlertMessage
}
