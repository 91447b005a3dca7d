// What was just said, with the way to take it back. It goes by itself; nothing depends on it.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Rectangle {
    id: root

    required property DiaryProgram program

    visible: root.program.notice.length > 0
    implicitHeight: visible ? line.implicitHeight + 2 * Theme.gapSmall : 0
    color: Theme.card
    border.width: Theme.hairline
    border.color: Theme.hair
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.program.notice

    GridLayout {
        id: line

        columns: 2
        anchors.fill: parent
        anchors.margins: Theme.gapSmall
        anchors.leftMargin: Theme.gap
        anchors.rightMargin: Theme.gap

        Words {
            text: root.program.notice
            Layout.fillWidth: true
            Accessible.ignored: true
        }
        ActButton {
            text: root.program.undoShown ? qsTr("Correct it") : qsTr("Close")
            onClicked: root.program.undoShown ? root.program.undoSave() : root.program.dismissNotice()
        }
    }
}
