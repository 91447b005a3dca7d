// Why a course is in the queue, and who is on it.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property queueRow row
    readonly property bool emergency: root.row.urgency === 1

    spacing: 2

    Words {
        text: root.row.title
        strong: true
        color: root.emergency ? Theme.inkOnAlarm : Theme.ink
        font.pixelSize: root.emergency ? Theme.textDisplay : Theme.textBody
        Layout.fillWidth: true
    }
    Words {
        text: root.row.more.length > 0 ? root.row.reason + " (" + root.row.more + ")" : root.row.reason
        color: root.emergency ? Theme.inkOnAlarm : Theme.ink
        font.pixelSize: root.emergency ? Theme.textLarge : Theme.textBody
        Layout.fillWidth: true
    }
    Words {
        visible: root.row.others.length > 0
        text: root.row.others
        strong: true
        color: root.emergency ? Theme.inkOnAlarm : Theme.ink
        font.pixelSize: root.emergency ? Theme.textLarge : Theme.textBody
        Layout.fillWidth: true
    }
    Words {
        visible: root.emergency
        text: root.row.advice + " " + root.row.phone
        strong: true
        color: Theme.inkOnAlarm
        font.pixelSize: Theme.textLarge
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapSmall
    }
    Words {
        visible: root.row.overdue.length > 0
        text: root.row.overdue
        strong: true
        color: root.emergency ? Theme.inkOnAlarm : Theme.callNow
        Layout.fillWidth: true
    }
    Words {
        text: (root.row.reach.length > 0 ? root.row.reach + "\n" : "")
              + (root.row.taken.length > 0 ? root.row.taken + " · " : "") + root.row.lastEntry
              + (root.row.unopened.length > 0 ? " · " + root.row.unopened : "")
        small: true
        strong: root.row.isTaken
        color: root.emergency ? Theme.inkOnAlarm : Theme.inkSoft
        Layout.fillWidth: true
    }
}
