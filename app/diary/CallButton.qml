// One number to call: shown as well as dialled. Where nothing here can dial, or nobody can know, it stands large, to be dialled elsewhere.
//
// In   primary, tone: of the button
//      brief: at the foot of a page, where there is little room: the number stands on the button alone
import QtQuick
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

// Placed by hand: in the foot of the first page of a window a positioner came to no height, and the number to call lay below
// the edge. A layout inside another keeps the height of a width that has passed.
Item {
    id: root

    required property WarningBoard board
    required property var line
    property bool primary: false
    property color tone: Theme.tide
    property bool brief: false
    readonly property string number: "\u2066" + root.line.number.replace(/ /g, "\u00a0") + "\u2069"
    readonly property bool undialled: root.board.undialled.length > 0 && root.board.undialled === root.line.number

    readonly property string advice: root.board.dialTried ? qsTr("If no call starts, dial this number on a phone:")
                                                          : qsTr("This device can not call. Please dial this number on a phone:")

    implicitHeight: large.visible ? large.y + large.height : call.y + call.height

    Told {
        id: above

        visible: root.undialled && root.brief
        text: root.advice
        strong: false
        width: root.width
        Accessible.name: root.advice + " " + root.number
    }
    ActButton {
        id: call

        y: above.visible ? above.height + Theme.gapSmall : 0
        text: qsTr("%1: %2").arg(root.line.title).arg(root.number)
        hint: qsTr("Calls this number")
        primary: root.primary
        tone: root.tone
        onClicked: root.board.call(root.line.number)
        width: root.width
    }
    Told {
        id: below

        y: call.y + call.height + Theme.gapSmall
        visible: root.undialled && !root.brief
        text: root.advice
        strong: false
        width: root.width
        Accessible.name: root.advice + " " + root.number
    }
    Words {
        id: large

        y: below.y + below.height + Theme.gapSmall
        visible: root.undialled && !root.brief
        text: root.number
        strong: true
        font.pixelSize: Theme.textLarge
        horizontalAlignment: Text.AlignHCenter
        width: root.width
        Accessible.ignored: true
    }
}
