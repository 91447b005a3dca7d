// A group of the recovery code, asked back from the paper before the code goes for good.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

ColumnLayout {
    id: root

    required property KeysBoard board

    spacing: Theme.gap
    onVisibleChanged: {
        paper.field.clear();
        if (root.visible)
            Qt.callLater(paper.field.forceActiveFocus);
    }

    Words {
        text: qsTr("One group of it, to be sure that the paper is right. After that the code is not shown any more.")
        strong: true
        Layout.fillWidth: true
    }
    LineField {
        id: paper

        label: root.board.askedText
        problem: root.board.askedProblem
        secret: true  // no dictionary learns it; it may be seen, as on the paper
        shown: true
        onAccepted: root.board.readBack(paper.field.text)
        Layout.fillWidth: true
    }
    ActButton {
        primary: true
        text: qsTr("It is on my paper")
        onClicked: root.board.readBack(paper.field.text)
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Show it once more")
        onClicked: root.board.showCode()
        Layout.fillWidth: true
    }
}
