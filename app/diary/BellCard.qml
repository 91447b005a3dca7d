// Reminders do not ring, and what can be done about it; or they do, and one can be tried. The list below is the truth all the same.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Card {
    id: root

    required property ReminderBoard board

    implicitHeight: column.implicitHeight + 2 * Theme.gap

    ColumnLayout {
        id: column

        anchors.fill: parent
        anchors.margins: Theme.gap
        spacing: Theme.gapSmall

        Words {
            text: root.board.card
            Layout.fillWidth: true
        }
        Told {
            visible: root.board.tryOffered && text.length > 0
            text: root.board.tried
            Layout.fillWidth: true
        }
        ActButton {
            visible: root.board.asking
            text: qsTr("Ring for reminders")
            onClicked: root.board.allow(true)
            Layout.fillWidth: true
        }
        ActButton {
            visible: root.board.asking
            text: qsTr("Do not ring")
            onClicked: root.board.allow(false)
            Layout.fillWidth: true
        }
        ActButton {
            visible: root.board.tryOffered
            text: qsTr("Ring once to try it")
            onClicked: root.board.tryBell()
            Layout.fillWidth: true
        }
        ActButton {
            visible: root.board.tryOffered
            text: qsTr("Put this away")
            onClicked: root.board.putTryAway()
            Layout.fillWidth: true
        }
    }
}
