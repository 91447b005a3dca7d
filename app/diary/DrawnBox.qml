// A passphrase that was drawn, to write on paper. It goes out of sight with the program, and comes back when asked for.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

ColumnLayout {
    id: root

    required property LockBoard board
    property bool here: false  // what was drawn before this page was made stays out of sight

    spacing: Theme.gapSmall
    onVisibleChanged: sight.shown = root.here && root.visible
    Component.onCompleted: root.here = true

    SecretSight {
        id: sight
    }
    Words {
        text: qsTr("Write this on paper now, and keep the paper where only you find it. You type it to open the diary, with or without the dashes.")
        strong: true
        Layout.fillWidth: true
    }
    Words {
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
        text: qsTr("Show it")
        checked: sight.shown
        onToggled: sight.shown = checked
        Layout.fillWidth: true
    }
    Words {
        visible: text.length > 0
        text: root.board.problem
        color: Theme.callNow
        strong: true
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }
    ActButton {
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
