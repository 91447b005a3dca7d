// A number with a button on each side; arrow keys step as well.
//
// In   label, value, from, to, step, decimals, unit, lowest (the mark that says that `from` is no number but not said)
// Out  moved(value)
import QtQuick
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Item {
    id: root

    property string label
    property string unit
    property alias value: number.value
    property alias from: number.from
    property alias to: number.to
    property alias step: number.step
    property alias decimals: number.decimals
    property alias lowest: number.lowest
    signal moved(real value)

    // Wide to begin with, so that nothing wraps before the layout has given a width: a layout that
    // once saw a higher field keeps room for it.
    implicitWidth: 30 * Theme.textBody
    implicitHeight: less.y + less.height

    StepValue {
        id: number

        onMoved: value => root.moved(value)
        onChanged: input.text = number.text
    }
    OverLabel {
        id: over

        room: root.width
        text: root.unit.length > 0 ? root.label + ", " + root.unit : root.label
    }
    ActButton {
        id: less

        anchors.left: parent.left
        y: over.height + Theme.gapHair
        text: "−"
        hint: root.label
        Accessible.name: qsTr("%1: less").arg(root.label)
        implicitWidth: Theme.target
        horizontalPadding: 0
        onClicked: number.down()
    }
    T.TextField {
        id: input

        anchors.horizontalCenter: parent.horizontalCenter
        y: less.y
        width: root.width - 2 * (less.width + Theme.gapHair)
        text: number.text
        implicitHeight: Math.max(Theme.target, contentHeight + Theme.gapSmall)
        horizontalAlignment: TextInput.AlignHCenter
        verticalAlignment: TextInput.AlignVCenter
        color: Theme.ink
        selectionColor: Theme.tide
        selectedTextColor: Theme.inkOnTide
        font.family: Theme.family
        font.pixelSize: Theme.textBody
        selectByMouse: true
        inputMethodHints: Qt.ImhFormattedNumbersOnly
        onEditingFinished: number.take(input.text)
        Keys.onUpPressed: number.up()
        Keys.onDownPressed: number.down()
        Accessible.name: root.label
        Accessible.description: (number.text === number.lowest ? qsTr("not said") + ", " : "") + number.range + " " + root.unit

        background: Rectangle {
            color: Theme.card
            radius: Theme.corner
            border.width: Theme.hairline
            border.color: Theme.line

            FocusRing {
                shown: input.activeFocus
            }
        }
    }
    ActButton {
        anchors.right: parent.right
        y: less.y
        text: "+"
        hint: root.label
        Accessible.name: qsTr("%1: more").arg(root.label)
        implicitWidth: Theme.target
        horizontalPadding: 0
        onClicked: number.up()
    }
}
