// A passphrase that was drawn, to write on paper. It goes out of sight with the program, and comes back when asked for.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

ColumnLayout {
    id: root

    required property LockBoard board
    readonly property bool asking: root.board.asking
    readonly property string typed: paper.field.text
    property alias paperField: paper.field
    property bool here: false  // what was drawn before this page was made stays out of sight

    spacing: Theme.gapSmall
    onVisibleChanged: sight.shown = root.here && root.visible && !root.asking
    onAskingChanged: {
        paper.field.clear();
        sight.shown = root.here && root.visible && !root.asking;
    }
    Component.onCompleted: root.here = true

    SecretSight {
        id: sight
    }
    Words {
        visible: root.asking
        text: qsTr("Two groups of it, to be sure that the paper is right. Without the paper you could not open your diary again.")
        strong: true
        Layout.fillWidth: true
    }
    LineField {
        id: paper

        visible: root.asking
        label: root.board.askedText
        problem: root.board.problem
        secret: true  // no dictionary learns it; it may be seen, as on the paper
        shown: true
        onAccepted: root.board.createDrawn(paper.field.text)
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.asking
        text: qsTr("Show it once more")
        onClicked: root.board.showDrawn()
        Layout.fillWidth: true
    }
    Words {
        visible: !root.asking
        text: qsTr("Write this on paper now, and keep the paper where only you find it. You type it to open the diary, with or without the dashes.")
        strong: true
        Layout.fillWidth: true
    }
    Words {
        visible: !root.asking
        text: sight.shown ? root.board.drawn : "••••-••••-••••-••••"
        font.family: Theme.codeFamily
        font.pixelSize: Theme.textLarge
        font.weight: Font.DemiBold
        horizontalAlignment: Text.AlignHCenter
        LayoutMirroring.enabled: false
        Accessible.name: sight.shown ? root.board.drawn.split("").join(" ") : qsTr("Out of sight")
        Layout.fillWidth: true
    }
    TickBox {
        visible: !root.asking
        text: qsTr("Show it")
        checked: sight.shown
        onToggled: sight.shown = checked
        Layout.fillWidth: true
    }
    Told {
        visible: !root.asking && text.length > 0
        text: root.board.problem
        alarm: true
        Layout.fillWidth: true
    }
    ActButton {
        visible: !root.asking
        text: qsTr("Draw another one")
        onClicked: { root.board.draw(); sight.shown = true; }
        Layout.fillWidth: true
    }
    ActButton {
        quiet: true
        text: qsTr("I choose my own")
        onClicked: root.board.chooseOwn()
        Layout.fillWidth: true
    }
}
