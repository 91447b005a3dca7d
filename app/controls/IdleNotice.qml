// Says calmly that the program locks soon, with the way to stay. Any other touch or key does the same.
//
// In   lock, text
import QtQuick
import Ebbline.Controls
import Ebbline.Theme

Rectangle {
    id: root

    required property IdleLock lock
    property string text

    visible: root.lock.ending
    implicitHeight: visible ? acts.y + acts.height + Theme.gapSmall : 0
    color: Theme.card
    border.width: Theme.hairline
    border.color: Theme.line
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.text

    Words {
        id: words

        x: Theme.gap
        y: Theme.gapSmall
        width: root.width - 2 * Theme.gap
        text: root.text
        Accessible.ignored: true
    }
    ActButton {
        id: acts

        x: Theme.gap
        y: words.y + words.height + Theme.gapSmall
        width: Math.min(implicitWidth, words.width)
        text: qsTr("Stay open")
        onClicked: root.lock.used()
    }
}
