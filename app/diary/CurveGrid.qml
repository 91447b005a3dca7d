// Curves of both sides, side by side where there is room.
//
// In   pictures, room (the width that there is)
import QtQuick
import Ebbline.Diary
import Ebbline.Theme

Grid {
    id: root

    required property var pictures
    required property real room

    columns: root.room > 300 * Theme.textScale ? 2 : 1
    spacing: Theme.gapSmall
    verticalItemAlignment: Grid.AlignBottom

    Repeater {
        model: root.pictures

        SideCurve {
            width: (root.room - (root.columns - 1) * Theme.gapSmall) / root.columns
        }
    }
}
