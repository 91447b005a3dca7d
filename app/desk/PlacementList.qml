// All threads of the treatment; choosing one shows its details.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    property TreatmentEditor editor
    readonly property bool ready: root.editor !== null

    spacing: 0

    Heading {
        visible: root.ready && root.editor.placements.count > 0
        level: 2
        text: root.ready ? qsTr("%Ln thread(s)", "", root.editor.placements.count) : ""
        Layout.fillWidth: true
        Layout.bottomMargin: Theme.gapHair
    }
    Repeater {
        model: root.ready ? root.editor.placements : null

        T.AbstractButton {
            id: line

            required property placementRow row
            readonly property bool chosen: line.row.number === root.editor.selected

            implicitHeight: Math.max(Theme.target, cells.implicitHeight + Theme.gapSmall)
            focusPolicy: Qt.StrongFocus
            onClicked: root.editor.choose(line.row.number)
            Keys.onReturnPressed: line.clicked()
            Keys.onDeletePressed: { line.clicked(); root.editor.removeSelected(); }
            Layout.fillWidth: true
            Accessible.role: Accessible.ListItem
            Accessible.name: line.row.spoken
            Accessible.selectable: true
            Accessible.selected: line.chosen
            Accessible.onPressAction: line.clicked()

            contentItem: RowLayout {
                id: cells

                spacing: Theme.gapSmall

                Words {
                    text: "%L1".arg(line.row.number)
                    strong: true
                    Layout.preferredWidth: 2 * Theme.textBody
                    Accessible.ignored: true
                }
                SideMark {
                    isLeft: line.row.isLeft
                }
                Words {
                    text: line.row.side + ", " + line.row.zone
                    strong: line.chosen
                    Layout.fillWidth: true
                    Layout.preferredWidth: 10 * Theme.textBody
                    Accessible.ignored: true
                }
                Words {
                    text: line.row.thread + " · " + line.row.lot + (line.row.epinephrine.length > 0 ? " · " + line.row.epinephrine : "")
                    Layout.fillWidth: true
                    Layout.preferredWidth: 16 * Theme.textBody
                    Accessible.ignored: true
                }
                Words {
                    text: line.row.volume
                    Accessible.ignored: true
                }
                Words {
                    visible: line.row.caution.length > 0
                    text: qsTr("care")
                    strong: true
                    color: Theme.callNow
                    Accessible.ignored: true
                }
            }
            background: Rectangle {
                color: line.chosen ? Theme.chosen : "transparent"
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
    }
}
