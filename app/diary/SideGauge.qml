// Eleven marks for one side, 0 at the bottom and 10 across the top, two in a row. The chosen one is
// filled and those below it are wet, as water in a lock.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

ColumnLayout {
    id: root

    required property var modelData
    required property EntryBoard board
    readonly property bool onLeft: root.modelData.side === 1

    spacing: Theme.gapSmall

    Words {
        text: root.modelData.name
        strong: true
        color: root.onLeft ? Theme.left : Theme.right
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
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
