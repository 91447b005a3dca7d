// A number with a button on each side; arrow keys step as well.
//
// In   label, value, from, to, step, decimals, unit
// Out  moved(value)
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    property string label
    property string unit
    property alias value: number.value
    property alias from: number.from
    property alias to: number.to
    property alias step: number.step
    property alias decimals: number.decimals
    signal moved(real value)

    spacing: Theme.gapHair

    StepValue {
        id: number

        onMoved: value => root.moved(value)
        onChanged: input.text = number.text
    }
    Words {
        text: root.unit.length > 0 ? root.label + ", " + root.unit : root.label
        small: true
        soft: true
        Layout.fillWidth: true
        Accessible.ignored: true
    }
    RowLayout {
        spacing: Theme.gapHair
        Layout.fillWidth: true

        ActButton {
            text: "−"
            hint: root.label
            Accessible.name: qsTr("%1: less").arg(root.label)
            implicitWidth: Theme.target
            horizontalPadding: 0
            onClicked: number.down()
        }
        T.TextField {
            id: input

            text: number.text
            implicitHeight: Math.max(Theme.target, contentHeight + Theme.gapSmall)
            implicitWidth: Theme.textBody * 4
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
            Layout.fillWidth: true
            Accessible.role: Accessible.SpinBox
            Accessible.name: root.label
            Accessible.description: number.range + " " + root.unit

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
            text: "+"
            hint: root.label
            Accessible.name: qsTr("%1: more").arg(root.label)
            implicitWidth: Theme.target
            horizontalPadding: 0
            onClicked: number.up()
        }
    }
}
