// An urgency: always its word; then a form that grows with it.
//
// In   urgency (1 emergency .. 4 follow-up), text, onFill (it stands on a filled bar already)
import QtQuick
import Ebbline.Theme

Rectangle {
    id: root

    required property int urgency
    required property string text
    property bool onFill: false
    readonly property bool chip: root.urgency === 3 && !root.onFill
    readonly property bool filled: root.urgency <= 2 && !root.onFill
    readonly property color tone: root.urgency === 1 ? Theme.emergency : root.urgency === 2 ? Theme.callNow
                                : root.urgency === 3 ? Theme.nextDay : Theme.atReview

    implicitWidth: word.implicitWidth + (root.chip || root.filled ? 2 * Theme.gapSmall : 0)
    implicitHeight: word.implicitHeight + Theme.gapHair
    radius: Theme.corner / 2
    color: !root.filled ? "transparent" : root.urgency === 1 ? Theme.emergencyFill : Theme.callNowFill
    border.width: root.chip ? Theme.hairline : 0
    border.color: root.tone

    Text {
        id: word

        anchors.centerIn: parent
        text: root.text
        color: root.filled || root.onFill ? Theme.inkOnAlarm : root.tone
        font.family: Theme.family
        font.pixelSize: root.urgency === 1 && root.onFill ? Theme.textTitle : Theme.textBody
        font.weight: root.urgency < 4 ? Font.DemiBold : Font.Normal
        Accessible.role: Accessible.StaticText
        Accessible.name: root.text
    }
}
