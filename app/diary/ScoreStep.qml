// One symptom, both sides. Next to each other as in the picture where there is room: a gauge of eleven marks each, low
// water at the bottom. On a small phone one below the other, each flat, so that no number is out of sight. Nothing is set
// until it is touched; 0 is as near as any other.
//
// In   room   what the page has for the question, px: its height without what stands above and below it
import QtQuick
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Column {
    id: root

    required property EntryBoard board
    required property real room
    readonly property bool wideEnough: root.width > 4 * Theme.target + 5 * Theme.gapSmall
    // Six rows of marks with the face above and what was said last time below; and the words of the scale.
    readonly property real standingHeight: 6 * Theme.target + 5 * Theme.gapSmall + 1.12 * Theme.target + 2 * Theme.gapSmall
                                           + 2 * Theme.textSmall * Theme.leading + 2 * Theme.textBody * Theme.leading
    readonly property bool flat: !root.wideEnough || root.standingHeight > root.room

    spacing: root.flat ? Theme.gapHair : Theme.gapSmall

    Words {
        width: root.width
        visible: !root.flat
        text: root.board.scale
        soft: true
    }
    Grid {
        id: gauges

        columns: root.flat ? 1 : 2
        spacing: root.flat ? Theme.gapSmall : Theme.gap
        verticalItemAlignment: Grid.AlignBottom  // the zeros stand on one line
        // As in the picture: never mirrored.
        LayoutMirroring.enabled: false

        Repeater {
            model: root.board.sides

            SideGauge {
                board: root.board
                flat: root.flat
                width: root.flat ? root.width : (root.width - Theme.gap) / 2
            }
        }
    }
    Words {
        width: root.width
        visible: root.flat
        text: root.board.scale
        small: true
        soft: true
    }
}
