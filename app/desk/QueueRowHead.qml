// The first line of a row: the urgency in its form, the name, the day, and since when. Where they
// do not fit on one line, they go on below.
import QtQuick
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Rectangle {
    id: root

    required property queueRow row
    readonly property bool emergency: root.row.urgency === 1
    readonly property bool barred: root.row.urgency === 2
    readonly property color words: root.emergency || root.barred ? Theme.inkOnAlarm : Theme.ink
    readonly property color softWords: root.emergency || root.barred ? Theme.inkOnAlarm : Theme.inkSoft
    readonly property real room: root.width - 2 * Theme.gap
    readonly property real natural: mark.width + nameSize.advanceWidth + daySize.advanceWidth + 2 * Theme.gap + 4
                                    + Theme.reach * (name.font.pixelSize + day.font.pixelSize)
    readonly property bool oneLine: root.natural + sinceSize.advanceWidth + Theme.reach * since.font.pixelSize + Theme.gapLarge <= root.room

    implicitHeight: (root.oneLine ? line.y + line.height : since.y + since.height) + (root.barred ? Theme.gapSmall : Theme.gapHair)
    color: root.barred ? Theme.callNowFill : "transparent"
    radius: Theme.corner

    TextMetrics {
        id: nameSize

        text: name.text
        font: name.font
    }
    TextMetrics {
        id: daySize

        text: day.text
        font: day.font
    }
    TextMetrics {
        id: sinceSize

        text: since.text
        font: since.font
    }
    Flow {
        id: line

        anchors.left: parent.left
        anchors.leftMargin: Theme.gap
        y: Theme.gapSmall
        width: root.oneLine ? root.natural + 1 : Math.max(1, root.room)
        spacing: Theme.gap

        Item {
            id: mark

            width: urgency.implicitWidth
            height: nameSize.height * 1.2

            UrgencyMark {
                id: urgency

                anchors.verticalCenter: parent.verticalCenter
                urgency: root.row.urgency
                text: root.row.urgencyName
                onFill: root.emergency || root.barred
            }
        }
        Words {
            id: name

            width: Math.min(nameSize.advanceWidth + 2 + Theme.reach * name.font.pixelSize, line.width)
            text: root.row.name
            strong: true
            color: root.words
            font.pixelSize: root.emergency ? Theme.textTitle : Theme.textLarge
        }
        Words {
            id: day

            width: daySize.advanceWidth + 2 + Theme.reach * day.font.pixelSize
            height: Math.max(nameSize.height * 1.2, day.implicitHeight)
            text: root.row.day
            color: root.words
            verticalAlignment: Text.AlignVCenter
        }
    }
    Words {
        id: since

        anchors.left: root.oneLine ? undefined : line.left
        anchors.right: root.oneLine ? parent.right : undefined
        anchors.rightMargin: Theme.gap
        y: root.oneLine ? Theme.gapSmall + (line.height - height) / 2 : Theme.gapSmall + line.height
        width: Math.min(sinceSize.advanceWidth + 2 + Theme.reach * since.font.pixelSize, Math.max(1, root.room))
        text: qsTr("since %1 · %2").arg(root.row.since).arg(root.row.waiting)
        color: root.softWords
        small: true
    }
}
