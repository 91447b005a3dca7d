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

    RowLayout {
        spacing: Theme.gapSmall
        // Face and word keep their order: the gauges stand as in the picture in every language.
        LayoutMirroring.enabled: false
        Layout.alignment: Qt.AlignHCenter
        Layout.fillHeight: false

        FaceChart {
            visible: root.width > 7 * Theme.textBody
            view: 1
            tintedSide: root.modelData.side
            cautionsShown: false
            ink: Theme.inkSoft
            foldColor: Theme.fold
            leftColor: Theme.left
            rightColor: Theme.right
            implicitWidth: Theme.target * 0.8
            implicitHeight: implicitWidth * 1.4
            Layout.fillHeight: false
            Accessible.ignored: true
        }
        Words {
            text: root.modelData.name
            strong: true
            color: root.onLeft ? Theme.left : Theme.right
            horizontalAlignment: Text.AlignHCenter
            Layout.fillWidth: true
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
