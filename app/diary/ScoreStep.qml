// One symptom, both sides next to each other as in the picture: a gauge of eleven marks each, low
// water at the bottom. Nothing is set until it is touched; 0 is as near as any other.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

ColumnLayout {
    id: root

    required property EntryBoard board

    spacing: Theme.gapSmall

    Words {
        text: root.board.scale
        soft: true
        Layout.fillWidth: true
    }
    GridLayout {
        columns: root.width > 4 * Theme.target + 5 * Theme.gapSmall ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        // As in the picture: never mirrored.
        LayoutMirroring.enabled: false
        Layout.fillWidth: true

        Repeater {
            model: root.board.sides

            SideGauge {
                board: root.board
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.alignment: Qt.AlignBottom  // the zeros stand on one line
            }
        }
    }
}
