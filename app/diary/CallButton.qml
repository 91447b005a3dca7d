// One number to call: shown as well as dialled.
import QtQuick
import Ebbline.Controls
import Ebbline.Diary

ActButton {
    id: root

    required property WarningBoard board
    required property var line

    text: qsTr("%1: %2").arg(root.line.title).arg("\u2066" + root.line.number.replace(/ /g, "\u00a0") + "\u2069")
    hint: qsTr("Calls this number")
    onClicked: root.board.call(root.line.number)
}
