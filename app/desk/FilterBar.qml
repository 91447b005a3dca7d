// The filters that are on, each gone with one touch; and how many urgent rows are out of sight.
import QtQuick
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Column {
    id: root

    required property QueueBoard queue
    signal done  // what was touched may be gone, and the focus with it

    spacing: Theme.gapSmall

    Flow {
        visible: root.queue.filter.chips.length > 0
        width: root.width
        spacing: Theme.gapSmall

        Repeater {
            model: root.queue.filter.chips

            ActButton {
                required property string modelData
                required property int index

                objectName: "chip"
                width: Math.min(implicitWidth, root.width)
                text: modelData + " ×"
                hint: qsTr("Takes this filter off")
                onClicked: { root.done(); root.queue.filter.takeOff(index); }
            }
        }
    }
    Flow {
        visible: root.queue.hiddenUrgent.length > 0
        width: root.width
        spacing: Theme.gapSmall

        Told {
            width: Math.min(implicitWidth, root.width)
            height: Math.max(implicitHeight, Theme.target)
            text: root.queue.hiddenUrgent
            alarm: true
            verticalAlignment: Text.AlignVCenter
        }
        ActButton {
            objectName: "showAll"
            text: qsTr("Show them")
            hint: qsTr("Takes search and filters off")
            tone: Theme.callNow
            onClicked: { root.done(); root.queue.showAll(); }
        }
    }
}
