// Says calmly that the program locks soon, with the way to stay. Any other touch or key does the same. Long words
// scroll, so that the page and the act stay in sight.
//
// In   lock, text, mostHeight
import QtQuick
import Ebbline.Controls
import Ebbline.Theme

Rectangle {
    id: root

    required property IdleLock lock
    property string text
    property real mostHeight: 400
    readonly property real naturalHeight: words.height + act.height + 3 * Theme.gapSmall

    visible: root.lock.ending
    implicitHeight: visible ? Math.min(root.naturalHeight, root.mostHeight) : 0
    color: Theme.card
    border.width: Theme.hairline
    border.color: Theme.line
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.text

    Flickable {
        x: Theme.gap
        y: Theme.gapSmall
        width: root.width - 2 * Theme.gap
        height: act.y - 2 * Theme.gapSmall
        contentHeight: words.height
        interactive: contentHeight > height
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Words {
            id: words

            width: parent.width
            text: root.text
            Accessible.ignored: true
        }
    }
    ActButton {
        id: act

        anchors.left: parent.left
        anchors.leftMargin: Theme.gap
        y: root.height - height - Theme.gapSmall
        width: Math.min(implicitWidth, root.width - 2 * Theme.gap)
        text: qsTr("Stay open")
        onClicked: root.lock.used()
    }
}
