// What can be done about a row without leaving the queue.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

RowLayout {
    id: root

    required property queueRow row
    readonly property color tone: root.row.urgency === 1 ? Theme.inkOnAlarm : Theme.tide
    signal opened
    signal taken
    signal called
    signal closing

    spacing: Theme.gapHair

    ActButton {
        text: qsTr("Open")
        tone: root.tone
        hint: root.row.name
        onClicked: root.opened()
    }
    ActButton {
        text: root.row.isTaken ? qsTr("Taken") : qsTr("Take")
        enabled: !root.row.isTaken
        tone: root.tone
        quiet: root.row.urgency !== 1
        hint: root.row.name
        onClicked: root.taken()
    }
    ActButton {
        text: qsTr("Called")
        tone: root.tone
        quiet: root.row.urgency !== 1
        hint: root.row.name
        onClicked: root.called()
    }
    ActButton {
        text: qsTr("Close")
        tone: root.tone
        quiet: root.row.urgency !== 1
        hint: root.row.name
        onClicked: root.closing()
    }
}
