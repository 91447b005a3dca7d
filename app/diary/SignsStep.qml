// Warning signs in plain words. Touch what is true; the button below says no to the rest.
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
        text: qsTr("Touch each one that is true now.")
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
}
