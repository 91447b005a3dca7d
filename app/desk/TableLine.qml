// One line of a table: cells in columns of the given shares. A line that opens something is a
// control: touch, Enter and Space open it.
//
// In   cells, widths, strong (a head), opens, spoken
// Out  opened
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

Item {
    id: root

    required property list<string> cells
    required property list<real> widths
    property bool strong: false
    property bool opens: false
    property string spoken: root.cells.join(", ")
    signal opened

    implicitHeight: Math.max(root.opens ? Theme.target : 0, row.implicitHeight + Theme.gapSmall)
    activeFocusOnTab: root.opens
    Keys.enabled: root.opens
    Keys.onReturnPressed: root.opened()
    Keys.onEnterPressed: root.opened()
    Keys.onSpacePressed: root.opened()
    Accessible.role: root.strong ? Accessible.ColumnHeader : root.opens ? Accessible.Link : Accessible.Row
    Accessible.name: root.spoken
    Accessible.focusable: root.opens
    Accessible.focused: root.activeFocus
    Accessible.onPressAction: if (root.opens) { root.opened(); }

    Rectangle {
        anchors.fill: parent
        visible: pointer.containsMouse
        color: Theme.chosen
        radius: Theme.corner
    }
    FocusRing {
        shown: root.activeFocus
    }
    MouseArea {
        id: pointer

        anchors.fill: parent
        enabled: root.opens
        hoverEnabled: root.opens
        cursorShape: root.opens ? Qt.PointingHandCursor : Qt.ArrowCursor
        onClicked: root.opened()
    }
    RowLayout {
        id: row

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        spacing: Theme.gapSmall

        Repeater {
            model: root.cells

            Words {
                required property string modelData
                required property int index

                text: modelData
                strong: root.strong
                small: root.strong
                Layout.fillWidth: true
                Layout.preferredWidth: root.widths[index] * Theme.textBody
                Layout.alignment: Qt.AlignTop
                Accessible.ignored: true
            }
        }
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.hairline
        color: root.strong ? Theme.line : Theme.hair
    }
}
