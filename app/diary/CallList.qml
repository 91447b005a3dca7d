// The numbers to call, in the order to try them.
//
// In   from   the first of them that stands here: what is before it stands elsewhere on the page
import QtQuick
import QtQuick.Layouts
import Ebbline.Diary
import Ebbline.Theme

ColumnLayout {
    id: root

    required property WarningBoard board
    property color tone: Theme.tide
    property int from: 0

    spacing: Theme.gapSmall

    Repeater {
        model: root.board.calls

        CallButton {
            required property int index
            required property var modelData

            board: root.board
            line: modelData
            visible: index >= root.from
            primary: index === 0 && !root.board.choosingPlace
            tone: modelData.emergency ? Theme.emergency : root.tone
            Layout.fillWidth: true
        }
    }
}
