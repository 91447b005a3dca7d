// Several lines to type, the label above.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Ebbline.Theme

ColumnLayout {
    id: root

    property string label
    property string value
    property int lines: 3
    signal edited(string text)

    spacing: Theme.gapHair

    Words {
        text: root.label
        small: true
        soft: true
        Layout.fillWidth: true
        Accessible.ignored: true
    }
    T.TextArea {
        id: input

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
        Layout.fillWidth: true
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
