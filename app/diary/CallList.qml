// The numbers to call, in the order to try them. Each is shown as well as dialled.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

ColumnLayout {
    id: root

    required property WarningBoard board
    property color tone: Theme.tide

    spacing: Theme.gapSmall

    Repeater {
        model: root.board.calls

        ActButton {
            required property int index
            required property var modelData

            primary: index === 0 && !root.board.choosingPlace
            tone: modelData.emergency ? Theme.emergency : root.tone
            text: qsTr("%1: %2").arg(modelData.title).arg("\u2066" + modelData.number.replace(/ /g, "\u00a0") + "\u2069")
            hint: qsTr("Calls this number")
            onClicked: root.board.call(modelData.number)
            Layout.fillWidth: true
        }
    }
}
