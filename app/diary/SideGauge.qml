// Eleven marks for one side. Where there is room they stand as water in a lock, 0 at the bottom and 10 across the top,
// two in a row. On a small phone they lie flat in two rows, 0 to 5 and 6 to 10, and the face is folded away: 0 is as
// near as any other. The chosen one is filled and those below it are wet.
//
// In   flat (two rows)
import QtQuick
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Face
import Ebbline.Theme

Column {
    id: root

    required property var modelData
    required property EntryBoard board
    property bool flat: false
    readonly property bool onLeft: root.modelData.side === 1

    spacing: root.flat ? Theme.gapHair : Theme.gapSmall

    // Face and word keep their order: the gauges stand as in the picture in every language. Placed by hand: a layout
    // would keep the height of a word that it once saw in one line.
    Item {
        id: head

        readonly property real faceRoom: face.visible ? face.width + Theme.gapSmall : 0
        readonly property real wordsWide: name.advanceWidth + 2 + Theme.reach * side.font.pixelSize
        // Flat, what was said last time stands beside the side where it fits.
        readonly property bool beforeBeside: root.flat && head.wordsWide + Theme.gapSmall + before.width <= head.width

        width: root.width
        height: Math.max(face.visible ? face.height : 0, side.height, head.beforeBeside ? before.height : 0)
        LayoutMirroring.enabled: false

        TextMetrics {
            id: name

            text: side.text
            font: side.font
        }
        TextMetrics {
            id: last

            text: root.modelData.before
            font: before.font
        }

        FaceChart {
            id: face

            x: (head.width - head.faceRoom - side.width) / 2
            y: (head.height - face.height) / 2
            width: Theme.target * 0.8
            height: face.width * 1.4
            visible: !root.flat && root.width > 8.6 * Theme.textBody
            view: 1
            tintedSide: root.modelData.side
            cautionsShown: false
            ink: Theme.inkSoft
            foldColor: Theme.fold
            leftColor: Theme.left
            rightColor: Theme.right
            Accessible.ignored: true
        }
        Words {
            id: side

            x: root.flat ? 0 : face.x + head.faceRoom
            y: (head.height - side.height) / 2
            width: Math.min(head.wordsWide, Math.max(1, head.width - head.faceRoom))
            text: root.modelData.name
            strong: true
            color: root.onLeft ? Theme.left : Theme.right
            horizontalAlignment: root.flat ? Text.AlignLeft : Text.AlignHCenter
        }
        Words {
            id: before

            x: head.width - before.width
            y: (head.height - before.height) / 2
            width: last.advanceWidth + 2 + Theme.reach * before.font.pixelSize
            visible: head.beforeBeside && text.length > 0
            text: root.modelData.before
            small: true
            soft: true
        }
    }
    Item {
        id: marks

        readonly property int across: root.flat ? 6 : 2
        // A target keeps its 48 px; what is left over is the gap.
        readonly property real gapAcross: root.flat ? Math.max(0, Math.min(Theme.gapSmall, Math.floor((marks.width - 6 * Theme.targetSize) / 5)))
                                                    : Theme.gapSmall
        readonly property real markWidth: (marks.width - (marks.across - 1) * marks.gapAcross) / marks.across
        readonly property real markHeight: root.flat ? Math.max(Theme.targetSize, Math.ceil(Theme.textLarge * 1.4)) : Theme.target
        readonly property real gapDown: root.flat ? Theme.gapHair : Theme.gapSmall
        readonly property int rows: root.flat ? 2 : 6

        width: root.width
        height: marks.rows * marks.markHeight + (marks.rows - 1) * marks.gapDown
        LayoutMirroring.enabled: false

        Repeater {
            model: 11

            GaugeMark {
                id: mark

                required property int index
                readonly property bool wide: !root.flat && mark.index === 10
                readonly property int row: root.flat ? (mark.index < 6 ? 0 : 1) : 5 - Math.floor(mark.index / 2)
                readonly property int place: mark.index % marks.across

                points: mark.index
                chosen: root.modelData.points === mark.index
                wet: root.modelData.points > mark.index
                tone: root.onLeft ? Theme.left : Theme.right
                tight: marks.gapAcross < Theme.gapHair
                question: root.board.question + " " + root.modelData.name
                x: mark.place * (marks.markWidth + marks.gapAcross)
                y: mark.row * (marks.markHeight + marks.gapDown)
                width: mark.wide ? marks.width : marks.markWidth
                height: marks.markHeight
                onClicked: root.board.answer(root.modelData.side, mark.index)
            }
        }
    }
    Words {
        width: root.width
        height: Math.max(implicitHeight, root.flat ? 0 : Theme.textSmall * Theme.leading)
        visible: !root.flat || (!head.beforeBeside && text.length > 0)
        text: root.modelData.before
        small: true
        soft: true
        horizontalAlignment: root.flat ? Text.AlignLeft : Text.AlignHCenter
    }
}
