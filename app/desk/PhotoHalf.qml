// One of the two photographs that stand beside each other, with the way to the one before and after.
import QtQuick
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

// Not a layout: in one, what was wrapped before it was as wide as its half keeps that height.
Column {
    id: root

    required property PhotoComparison comparison
    required property int half
    required property photoSide side
    property real frameHeight: 400
    readonly property bool marking: root.comparison.marking === root.half

    spacing: Theme.gapHair

    Words {
        width: root.width
        text: root.side.there ? root.side.title : " "  // keeps both frames at one height
        strong: true
        Accessible.ignored: !root.side.there
    }
    Card {
        width: root.width
        height: root.frameHeight
        border.color: root.marking ? Theme.tide : Theme.hair
        border.width: root.marking ? Theme.focusWidth : Theme.hairline

        PhotoFrame {
            id: frame

            objectName: root.half === PhotoComparison.Earlier ? "earlierFrame" : "laterFrame"
            anchors.fill: parent
            anchors.margins: Theme.gapHair
            visible: root.side.there
            comparison: root.comparison
            half: root.half
            leftColor: Theme.left
            rightColor: Theme.right
            cursorColor: Theme.tide
            halo: Theme.card
            Accessible.role: root.marking ? Accessible.Canvas : Accessible.Graphic
            Accessible.name: root.side.spoken
            Accessible.description: root.marking ? root.comparison.cursorText : root.side.note
            Accessible.focusable: true

            FocusRing {
                shown: frame.activeFocus
            }
        }
        Words {
            anchors.centerIn: parent
            width: parent.width - 2 * Theme.gap
            visible: root.side.state.length > 0
            text: root.side.state
            soft: true
            horizontalAlignment: Text.AlignHCenter
        }
    }
    Words {
        width: root.width
        visible: root.side.note.length > 0
        text: root.side.note
        small: true
        soft: true
    }
    Flow {
        width: root.width
        visible: root.side.there
        spacing: Theme.gapHair

        ActButton {
            text: qsTr("The one before")
            width: Math.min(implicitWidth, root.width)
            quiet: true
            enabled: root.side.canStepBack
            hint: root.side.title
            onClicked: root.comparison.step(root.half, -1)
        }
        ActButton {
            text: qsTr("The one after")
            width: Math.min(implicitWidth, root.width)
            quiet: true
            enabled: root.side.canStepOn
            hint: root.side.title
            onClicked: root.comparison.step(root.half, 1)
        }
        ActButton {
            text: root.side.marked ? qsTr("Mark the eyes anew") : qsTr("Mark the eyes")
            width: Math.min(implicitWidth, root.width)
            quiet: true
            enabled: !root.marking && root.side.state.length === 0
            hint: root.side.title
            onClicked: {
                root.comparison.startMarking(root.half);
                frame.forceActiveFocus();
            }
        }
    }
    ActButton {
        visible: root.side.own
        text: qsTr("Take it back")
        width: Math.min(implicitWidth, root.width)
        quiet: true
        hint: root.side.title
        onClicked: root.comparison.askTakeBack(root.half)
    }
}
