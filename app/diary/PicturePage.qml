// One photograph, large, with where it is and the way to take it back.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program
    readonly property PictureBoard board: root.program.picture

    PhotoFrame {
        visible: root.board.line.here
        shelf: root.board.shelf
        photo: root.board.line.key
        whole: true
        implicitHeight: Math.min(width * (shape > 0 ? shape : 1.25), Math.max(160, root.height * (root.board.asking ? 0.3 : 0.65)))
        Layout.fillWidth: true
        Layout.fillHeight: false
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("The photograph: %1").arg(root.board.line.title)
    }
    Words {
        text: root.board.line.title
        strong: true
        Layout.fillWidth: true
    }
    Words {
        text: root.board.line.state
        color: Theme.tide
        Layout.fillWidth: true
    }
    Words {
        visible: root.board.arrived
        text: qsTr("That does not say that somebody looked at it. If you are worried, call.")
        soft: true
        Layout.fillWidth: true
    }
    Told {
        visible: root.board.asking
        text: qsTr("It goes from this phone now. It goes from the server and from the clinic's computers once they next sync. What somebody copied or printed stays.")
        Layout.fillWidth: true
    }
    Told {
        text: root.board.problem
        alarm: true
        Layout.fillWidth: true
    }
    ActButton {
        visible: !root.board.asking
        tone: Theme.callNow
        text: qsTr("Take it back …")
        hint: qsTr("Says first what that does")
        onClicked: root.board.askRemove()
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.asking
        primary: true
        text: qsTr("Leave it")
        onClicked: root.board.keep()
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.asking
        tone: Theme.callNow
        text: qsTr("Take it back now. There is no way back.")
        onClicked: root.board.remove()
        Layout.fillWidth: true
    }
}
