// One of the two photographs that stand beside each other, with the way to the one before and after.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property PhotoComparison comparison
    required property int half
    required property photoSide side
    property real frameHeight: 400
    readonly property bool marking: root.comparison.marking === root.half

    spacing: Theme.gapHair

    Words {
        text: root.side.there ? root.side.title : " "  // keeps both frames at one height
        strong: true
        Accessible.ignored: !root.side.there
        Layout.fillWidth: true
    }
    Card {
        implicitHeight: root.frameHeight
        border.color: root.marking ? Theme.tide : Theme.hair
        border.width: root.marking ? Theme.focusWidth : Theme.hairline
        Layout.fillWidth: true

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
        visible: root.side.note.length > 0
        text: root.side.note
        small: true
        soft: true
        Layout.fillWidth: true
    }
    // In a row where there is room for it, otherwise below each other.
    GridLayout {
        visible: root.side.there
        columns: root.width >= before.implicitWidth + after.implicitWidth + marks.implicitWidth + 2 * columnSpacing ? 3 : 1
        columnSpacing: Theme.gapHair
        rowSpacing: Theme.gapHair
        Layout.fillWidth: true
        Layout.preferredWidth: 1  // as wide as the half, not as its acts in one row
        Layout.fillHeight: false

        ActButton {
            id: before

            text: qsTr("The one before")
            quiet: true
            enabled: root.side.canStepBack
            hint: root.side.title
            onClicked: root.comparison.step(root.half, -1)
        }
        ActButton {
            id: after

            text: qsTr("The one after")
            quiet: true
            enabled: root.side.canStepOn
            hint: root.side.title
            onClicked: root.comparison.step(root.half, 1)
        }
        ActButton {
            id: marks

            text: root.side.marked ? qsTr("Mark the eyes anew") : qsTr("Mark the eyes")
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
        quiet: true
        hint: root.side.title
        onClicked: root.comparison.askTakeBack(root.half)
    }
}
