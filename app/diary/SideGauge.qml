// Eleven marks for one side, 0 at the bottom and 10 across the top, two in a row. The chosen one is
// filled and those below it are wet, as water in a lock.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Face
import Ebbline.Theme

ColumnLayout {
    id: root

    required property var modelData
    required property EntryBoard board
    readonly property bool onLeft: root.modelData.side === 1

    spacing: Theme.gapSmall

    // Face and word keep their order: the gauges stand as in the picture in every language. Placed by hand: a layout
    // would keep the height of a word that it once saw in one line.
    Item {
        id: head

        readonly property real faceRoom: face.visible ? face.width + Theme.gapSmall : 0

        implicitHeight: Math.max(face.visible ? face.height : 0, side.height)
        LayoutMirroring.enabled: false
        Layout.fillWidth: true

        TextMetrics {
            id: name

            text: side.text
            font: side.font
        }

        FaceChart {
            id: face

            x: (head.width - head.faceRoom - side.width) / 2
            y: (head.height - face.height) / 2
            width: Theme.target * 0.8
            height: face.width * 1.4
            visible: root.width > 8.6 * Theme.textBody
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

            x: face.x + head.faceRoom
            y: (head.height - side.height) / 2
            width: Math.min(name.advanceWidth + 2, Math.max(1, head.width - head.faceRoom))
            text: root.modelData.name
            strong: true
            color: root.onLeft ? Theme.left : Theme.right
            horizontalAlignment: Text.AlignHCenter
        }
    }
    GridLayout {
        columns: 2
        columnSpacing: Theme.gapSmall
        rowSpacing: Theme.gapSmall
        Layout.fillWidth: true

        Repeater {
            model: [10, 8, 9, 6, 7, 4, 5, 2, 3, 0, 1]

            GaugeMark {
                required property int modelData

                points: modelData
                chosen: root.modelData.points === modelData
                wet: root.modelData.points > modelData
                tone: root.onLeft ? Theme.left : Theme.right
                question: root.board.question + " " + root.modelData.name
                onClicked: root.board.answer(root.modelData.side, modelData)
                Layout.fillWidth: true
                Layout.columnSpan: modelData === 10 ? 2 : 1
            }
        }
    }
    Words {
        text: root.modelData.before
        small: true
        soft: true
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
        Layout.minimumHeight: Theme.textSmall * Theme.leading
    }
}
