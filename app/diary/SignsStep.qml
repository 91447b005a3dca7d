// Warning signs in plain words. Touch what is true; the button at the end says no to the rest, so that nobody can
// say no to what was not in sight.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

ColumnLayout {
    id: root

    required property EntryBoard board

    spacing: Theme.gapSmall

    Words {
        text: qsTr("Touch each one that is true now. The button to go on stands after the last one.")
        soft: true
        Layout.fillWidth: true
    }
    Repeater {
        model: root.board.signLines

        TickBox {
            required property var modelData

            text: modelData.text
            checked: modelData.ticked
            onToggled: root.board.tick(modelData.sign, checked)
            Layout.fillWidth: true
        }
    }
    ActButton {
        primary: true
        text: root.board.signsWord
        onClicked: root.board.signsDone()
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapSmall
    }
}
