// One instruction of the plan; the chosen one opens to be changed.
//
// In   row, editor
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property planRow row
    required property ProtocolEditor editor
    readonly property bool chosen: root.row.key === root.editor.chosen

    spacing: 0

    T.AbstractButton {
        id: line

        implicitHeight: Math.max(Theme.target, words.implicitHeight + 2 * Theme.gapSmall)
        focusPolicy: Qt.StrongFocus
        onClicked: root.editor.choose(root.row.key)
        Keys.onReturnPressed: line.clicked()
        Layout.fillWidth: true
        Accessible.role: Accessible.ListItem
        Accessible.name: root.row.spoken
        Accessible.selectable: true
        Accessible.selected: root.chosen
        Accessible.onPressAction: line.clicked()

        contentItem: ColumnLayout {
            id: words

            spacing: 2

            Words {
                text: root.row.changed ? qsTr("%1 (changed)").arg(root.row.what) : root.row.what
                strong: true
                Accessible.ignored: true
                Layout.fillWidth: true
                Layout.leftMargin: Theme.gapSmall
                Layout.rightMargin: Theme.gapSmall
            }
            Words {
                text: root.row.until + " · " + root.row.detail
                soft: true
                Accessible.ignored: true
                Layout.fillWidth: true
                Layout.leftMargin: Theme.gapSmall
                Layout.rightMargin: Theme.gapSmall
            }
        }
        background: Rectangle {
            color: root.chosen || line.hovered ? Theme.chosen : "transparent"
            radius: Theme.corner / 2

            Rectangle {
                anchors.bottom: parent.bottom
                width: parent.width
                height: Theme.hairline
                color: Theme.hair
            }
            FocusRing {
                shown: line.visualFocus
                anchors.margins: 0
            }
        }
    }
    Loader {
        active: root.chosen
        visible: active
        Layout.fillWidth: true
        Layout.margins: root.chosen ? Theme.gap : 0

        sourceComponent: PlanFields {
            editor: root.editor
        }
    }
}
