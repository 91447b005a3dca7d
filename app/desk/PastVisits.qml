// How many visits of long ago are folded away, and the way to them. The line stays in sight while there is one.
import QtQuick
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Flow {
    id: root

    required property QueueBoard queue

    visible: root.queue.pastVisits.length > 0
    spacing: Theme.gapSmall

    Words {
        objectName: "pastVisits"
        width: Math.min(implicitWidth, root.width)
        height: Math.max(implicitHeight, Theme.target)
        text: root.queue.pastVisits
        verticalAlignment: Text.AlignVCenter
    }
    ActButton {
        objectName: "showPast"
        text: root.queue.pastShown ? qsTr("Fold them away") : qsTr("Show them")
        hint: root.queue.pastVisits
        onClicked: root.queue.pastShown = !root.queue.pastShown
    }
}
