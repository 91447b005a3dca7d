// Several lines to type, the label above.
import QtQuick
import QtQuick.Templates as T
import Ebbline.Theme

Item {
    id: root

    property string label
    property string value
    property int lines: 3
    readonly property alias field: input
    signal edited(string text)

    // Wide to begin with, so that nothing wraps before the layout has given a width: a layout that
    // once saw a higher field keeps room for it.
    implicitWidth: 40 * Theme.textBody
    implicitHeight: input.y + input.height

    OverLabel {
        id: over

        room: root.width
        text: root.label
    }
    T.TextArea {
        id: input

        y: over.height + Theme.gapHair
        width: root.width
        text: root.value
        implicitHeight: Math.max(Theme.target, contentHeight + topPadding + bottomPadding,
                                 root.lines * Theme.textBody * Theme.leading + topPadding + bottomPadding)
        padding: Theme.gapSmall + Theme.gapHair
        color: Theme.ink
        selectionColor: Theme.tide
        selectedTextColor: Theme.inkOnTide
        font.family: Theme.family
        font.pixelSize: Theme.textBody
        wrapMode: TextEdit.Wrap
        selectByMouse: true
        onTextChanged: root.edited(input.text)
        KeyNavigation.priority: KeyNavigation.BeforeItem
        Keys.onTabPressed: nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
        Keys.onBacktabPressed: nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)
        Accessible.role: Accessible.EditableText
        Accessible.name: root.label
        Accessible.multiLine: true

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
}
