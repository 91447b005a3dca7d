// A passphrase to type, and a tick to read what is typed. Out of sight again when the page goes, or the program.
//
// In   label, problem, judged (a new one: says in words what it still lacks)
// Out  field; shown; accepted
import QtQuick
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Column {
    id: root

    property alias label: line.label
    property alias problem: line.problem
    property bool judged: false
    readonly property alias field: line.field
    readonly property alias shown: sight.shown
    signal accepted
    signal forget  // sent by the page: what was typed is done with

    onForget: {
        line.field.clear();
        sight.shown = false;
    }

    spacing: Theme.gapHair
    onVisibleChanged: if (!root.visible) root.forget()

    SecretSight {
        id: sight

        typed: line.field.text
    }
    LineField {
        id: line

        width: root.width
        secret: true
        shown: sight.shown
        onAccepted: root.accepted()
    }
    Words {
        width: root.width
        visible: root.judged
        text: sight.meter
        small: true
        soft: true
    }
    TickBox {
        width: root.width
        text: qsTr("Show what I type")
        checked: sight.shown
        onToggled: sight.shown = checked
        Accessible.description: line.label
    }
}
