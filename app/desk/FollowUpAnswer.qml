// What became of a finding that asked for a call and is still open.
//
// In   row, program (for the names of the outcomes)
// Out  chosen
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property answerRow row
    required property DeskProgram program
    signal chosen(int outcome)

    spacing: Theme.gapHair
    Layout.fillHeight: false

    Words {
        text: root.row.title
        strong: true
        Layout.fillWidth: true
    }
    Words {
        text: root.row.reason
        Layout.fillWidth: true
    }
    Choice {
        label: qsTr("What became of it?")
        options: root.program.outcomes
        current: root.row.outcome - 1
        onChosen: index => root.chosen(index + 1)
        Layout.fillWidth: true
    }
}
