// What was just said, with the way to take it back. It goes by itself unless it asks for something.
// Long words scroll, so that the page stays in sight.
import QtQuick
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Rectangle {
    id: root

    required property DiaryProgram program
    required property real mostHeight

    visible: root.program.notice.length > 0
    implicitHeight: visible ? Math.min(area.contentHeight, root.mostHeight) : 0
    color: Theme.card
    border.width: Theme.hairline
    border.color: Theme.hair
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.program.notice

    Flickable {
        id: area

        anchors.fill: parent
        contentHeight: acts.y + acts.height + Theme.gapSmall
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Words {
            id: words

            x: Theme.gap
            y: Theme.gapSmall
            width: root.width - 2 * Theme.gap
            text: root.program.notice
            Accessible.ignored: true
        }
        Flow {
            id: acts

            x: Theme.gap
            y: words.y + words.height + Theme.gapSmall
            width: words.width
            spacing: Theme.gapSmall

            ActButton {
                visible: root.program.undoShown
                text: qsTr("Correct it")
                onClicked: root.program.undoSave()
            }
            ActButton {
                text: qsTr("Close")
                onClicked: root.program.dismissNotice()
            }
        }
    }
    FocusFollower {
        area: area
    }
}
