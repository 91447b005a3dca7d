// One symptom, both sides next to each other as in the picture: a gauge of eleven marks each, low
// water at the bottom. Nothing is set until it is touched; 0 is as near as any other.
import QtQuick
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Column {
    id: root

    required property EntryBoard board

    spacing: Theme.gapSmall

    Words {
        width: root.width
        text: root.board.scale
        soft: true
    }
    Grid {
        id: gauges

        readonly property bool beside: root.width > 4 * Theme.target + 5 * Theme.gapSmall

        columns: gauges.beside ? 2 : 1
        spacing: Theme.gap
        verticalItemAlignment: Grid.AlignBottom  // the zeros stand on one line
        // As in the picture: never mirrored.
        LayoutMirroring.enabled: false

        Repeater {
            model: root.board.sides

            SideGauge {
                board: root.board
                width: gauges.beside ? (root.width - Theme.gap) / 2 : root.width
            }
        }
    }
}
