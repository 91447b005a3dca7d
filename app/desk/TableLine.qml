// One line of a table: cells in columns of the given shares.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

Item {
    id: root

    required property list<string> cells
    required property list<real> widths
    property bool strong: false
    property string spoken: root.cells.join(", ")

    implicitHeight: row.implicitHeight + Theme.gapSmall
    Accessible.role: root.strong ? Accessible.ColumnHeader : Accessible.Row
    Accessible.name: root.spoken

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
