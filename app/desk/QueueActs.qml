// What can be done about a row without leaving the queue.
import QtQuick
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Flow {
    id: root

    required property queueRow row
    property string closingBarred
    // Whoever took it and let it wait takes it anew.
    readonly property bool held: root.row.isMine && root.row.overdue.length === 0
    readonly property color tone: root.row.urgency === 1 ? Theme.inkOnAlarm : Theme.tide
    readonly property real natural: open.implicitWidth + take.implicitWidth + call.implicitWidth + close.implicitWidth
                                    + 3 * root.spacing + 1
    signal opened
    signal taken
    signal called
    signal closing

    spacing: Theme.gapHair

    ActButton {
        id: open

        text: qsTr("Open")
        tone: root.tone
        hint: root.row.name
        onClicked: root.opened()
    }
    ActButton {
        id: take

        text: root.held ? qsTr("Taken") : root.row.isTaken && !root.row.isMine ? qsTr("Take over") : qsTr("Take")
        enabled: !root.held
        tone: root.tone
        quiet: root.row.urgency !== 1
        hint: root.row.name
        onClicked: root.taken()
    }
    ActButton {
        id: call

        text: qsTr("Call")
        tone: root.tone
        quiet: root.row.urgency !== 1
        hint: root.row.name
        onClicked: root.called()
    }
    ActButton {
        id: close

        text: qsTr("Close")
        barred: root.closingBarred
        tone: root.tone
        quiet: root.row.urgency !== 1
        hint: root.row.name
        onClicked: root.closing()
    }
}
