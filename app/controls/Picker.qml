// One of many, in a list that opens: for choices too long to show all the time.
//
// In   label, options (words), current (index)
// Out  chosen(index)
import QtQuick
import QtQuick.Templates as T
import Ebbline.Theme

Item {
    id: root

    property string label
    property string spokenName: root.label  // for a label that stands elsewhere
    required property list<string> options
    property int current: -1
    signal chosen(int index)

    // Wide to begin with, so that nothing wraps before the layout has given a width: a layout that
    // once saw a higher field keeps room for it.
    implicitWidth: 30 * Theme.textBody
    implicitHeight: box.y + box.height
    readonly property real edge: Theme.gapSmall + Theme.gapHair

    OverLabel {
        id: over

        room: root.width
        text: root.label
    }
    T.ComboBox {
        id: box

        y: over.visible ? over.height + Theme.gapHair : 0
        width: root.width
        model: root.options
        currentIndex: root.current
        // Other options begin at the first of them by themselves.
        onModelChanged: box.currentIndex = Qt.binding(() => root.current)
        implicitHeight: Math.max(Theme.target, shown.implicitHeight + Theme.gapSmall)
        leftPadding: root.edge + (box.mirrored ? mark.width + Theme.gapHair : 0)
        rightPadding: root.edge + (box.mirrored ? 0 : mark.width + Theme.gapHair)
        focusPolicy: Qt.StrongFocus
        onActivated: index => root.chosen(index)
        Accessible.role: Accessible.ComboBox
        Accessible.name: root.spokenName
        Accessible.description: box.displayText
        Accessible.onPressAction: box.popup.open()

        contentItem: Text {
            id: shown

            text: box.displayText
            color: Theme.ink
            font.family: Theme.family
            font.pixelSize: Theme.textBody
            wrapMode: Text.Wrap
            textFormat: Text.PlainText
            horizontalAlignment: Text.AlignLeft
            verticalAlignment: Text.AlignVCenter
            Accessible.ignored: true
        }
        indicator: Text {
            id: mark

            x: box.mirrored ? root.edge : box.width - width - root.edge
            y: (box.height - height) / 2
            text: "▾"
            color: Theme.inkSoft
            font.family: Theme.family
            font.pixelSize: Theme.textBody
            Accessible.ignored: true
        }
        background: Rectangle {
            color: Theme.card
            radius: Theme.corner
            border.width: Theme.hairline
            border.color: Theme.line

            FocusRing {
                shown: box.visualFocus
            }
        }
        delegate: T.ItemDelegate {
            id: option

            required property int index
            required property string modelData

            width: ListView.view.width
            implicitHeight: Math.max(Theme.target, line.implicitHeight + Theme.gapSmall)
            horizontalPadding: Theme.gapSmall + Theme.gapHair
            text: option.modelData
            highlighted: box.highlightedIndex === option.index
            Accessible.role: Accessible.ListItem
            Accessible.name: option.text
            Accessible.onPressAction: option.clicked()

            contentItem: Text {
                id: line

                text: option.text
                color: Theme.ink
                font.family: Theme.family
                font.pixelSize: Theme.textBody
                font.weight: option.index === root.current ? Font.DemiBold : Font.Normal
                wrapMode: Text.Wrap
                textFormat: Text.PlainText
                horizontalAlignment: Text.AlignLeft
                verticalAlignment: Text.AlignVCenter
                Accessible.ignored: true
            }
            background: Rectangle {
                color: option.highlighted ? Theme.chosen : "transparent"
            }
        }
        popup: T.Popup {
            y: box.height + Theme.gapHair
            width: box.width
            height: Math.min(contentItem.implicitHeight + 2 * Theme.gapHair, 8 * Theme.target)
            padding: Theme.gapHair

            contentItem: ListView {
                clip: true
                implicitHeight: contentHeight
                model: box.delegateModel
                currentIndex: box.highlightedIndex
            }
            background: Card {
                border.color: Theme.line
            }
        }
    }
}
