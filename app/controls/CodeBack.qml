// A group of the recovery code, asked back from the paper before the code goes for good.
import QtQuick
import QtQuick.Layouts
import Ebbline.Theme

ColumnLayout {
    id: root

    property string asked    // for which group
    property string problem
    signal readBack(string typed)
    signal showAgain

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

        label: root.asked
        problem: root.problem
        secret: true  // no dictionary learns it; it may be seen, as on the paper
        shown: true
        onAccepted: root.readBack(paper.field.text)
        Layout.fillWidth: true
    }
    ActButton {
        primary: true
        text: qsTr("It is on my paper")
        onClicked: root.readBack(paper.field.text)
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Show it once more")
        onClicked: root.showAgain()
        Layout.fillWidth: true
    }
}
