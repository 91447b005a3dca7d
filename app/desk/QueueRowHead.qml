// The first line of a row: the urgency in its form, the name, the day, and since when.
import QtQuick
import QtQuick.Layouts
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

    implicitHeight: line.implicitHeight + (root.barred ? 2 * Theme.gapSmall : Theme.gapSmall + Theme.gapHair)
    color: root.barred ? Theme.callNowFill : "transparent"
    radius: Theme.corner

    RowLayout {
        id: line

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.bottomMargin: root.barred ? Theme.gapSmall : Theme.gapHair
        anchors.leftMargin: Theme.gap
        anchors.rightMargin: Theme.gap
        spacing: Theme.gap

        UrgencyMark {
            urgency: root.row.urgency
            text: root.row.urgencyName
            onFill: root.emergency || root.barred
        }
        Words {
            text: root.row.name
            strong: true
            color: root.words
            font.pixelSize: root.emergency ? Theme.textTitle : Theme.textLarge
            Layout.fillWidth: implicitWidth > root.width * 0.4
        }
        Words {
            text: root.row.day
            color: root.words
        }
        Item {
            Layout.fillWidth: true
        }
        Words {
            text: qsTr("since %1 · %2").arg(root.row.since).arg(root.row.waiting)
            color: root.softWords
            small: true
            horizontalAlignment: Text.AlignRight
            Layout.maximumWidth: root.width * 0.4
        }
    }
}
