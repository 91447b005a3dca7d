// A reason that leads to the entry behind it: underlined, by touch, Tab and Enter, or a screen reader's act. Plain words
// where no entry raised it.
//
// In   text, leads, color, size
// Out  followed
import QtQuick
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Theme

T.AbstractButton {
    id: root

    property bool leads: false
    property color color: Theme.ink
    property int size: Theme.textBody
    signal followed

    // Wide to begin with, so that nothing wraps before the layout has given a width.
    implicitWidth: 40 * Theme.textBody
    implicitHeight: root.leads ? Math.max(Theme.target, word.implicitHeight) : word.implicitHeight
    hoverEnabled: root.leads
    focusPolicy: root.leads ? Qt.StrongFocus : Qt.NoFocus
    onClicked: if (root.leads) root.followed()
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()
    Accessible.role: root.leads ? Accessible.Link : Accessible.StaticText
    Accessible.name: root.text
    Accessible.description: root.leads ? qsTr("Shows the entry behind it") : ""
    Accessible.onPressAction: if (root.leads) root.clicked()

    contentItem: Words {
        id: word

        text: root.text
        color: root.color
        font.pixelSize: root.size
        font.underline: root.leads
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
    background: FocusRing {
        shown: root.visualFocus
    }
}
