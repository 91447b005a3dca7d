// One of several, all visible: a row that wraps. The chosen one is filled, and says so.
//
// In   label, options (words), current (index, -1 for none), enough room or it wraps
// Out  chosen(index)
import QtQuick
import QtQuick.Templates as T
import Ebbline.Theme

Item {
    id: root

    property string label
    required property list<string> options
    property int current: -1
    signal chosen(int index)

    // Wide to begin with, so that nothing wraps before the layout has given a width: a layout that
    // once saw a higher field keeps room for it.
    implicitWidth: 70 * Theme.textBody
    implicitHeight: flow.y + flow.height

    OverLabel {
        id: over

        room: root.width
        text: root.label
    }
    Flow {
        id: flow

        y: over.visible ? over.height + Theme.gapHair : 0
        width: root.width
        spacing: Theme.gapSmall

        Repeater {
            model: root.options

            T.AbstractButton {
                id: option

                required property int index
                required property string modelData
                readonly property bool current: option.index === root.current

                text: option.modelData
                width: Math.min(Math.max(Theme.target, natural.advanceWidth + 2 * (Theme.gapSmall + Theme.gapHair)),
                                Math.max(Theme.target, flow.width))
                implicitHeight: Math.max(Theme.target, word.implicitHeight + Theme.gapSmall)
                horizontalPadding: Theme.gapSmall
                focusPolicy: Qt.StrongFocus
                onClicked: root.chosen(option.index)
                Accessible.role: Accessible.RadioButton
                Accessible.name: root.label.length > 0 ? root.label + ": " + option.text : option.text
                Accessible.checkable: true
                Accessible.checked: option.current
                Accessible.onPressAction: option.clicked()
                Keys.onReturnPressed: option.clicked()

                TextMetrics {
                    id: natural

                    text: option.text
                    font: word.font
                }

                contentItem: Text {
                    id: word

                    text: option.text
                    color: option.current ? Theme.inkOnTide : Theme.ink
                    font.family: Theme.family
                    font.pixelSize: Theme.textBody
                    font.weight: option.current ? Font.DemiBold : Font.Normal
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                    horizontalAlignment: Text.AlignHCenter
                    verticalAlignment: Text.AlignVCenter
                    Accessible.ignored: true
                }
                background: Rectangle {
                    radius: Theme.corner
                    color: option.current ? Theme.tide : option.hovered ? Theme.chosen : Theme.card
                    border.width: Theme.hairline
                    border.color: option.current ? Theme.tide : Theme.line

                    FocusRing {
                        shown: option.visualFocus
                    }
                }
            }
        }
    }
}
