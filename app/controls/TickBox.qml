// A yes that can be taken back. The whole line is the target.
import QtQuick
import QtQuick.Templates as T
import Ebbline.Theme

T.CheckBox {
    id: control

    implicitWidth: label.implicitWidth + leftPadding + rightPadding
    implicitHeight: Math.max(Theme.target, label.implicitHeight + Theme.gapSmall)
    spacing: Theme.gapSmall + Theme.gapHair
    leftPadding: control.mirrored ? 0 : box.width + control.spacing
    rightPadding: control.mirrored ? box.width + control.spacing : 0
    focusPolicy: Qt.StrongFocus
    opacity: control.enabled ? 1 : 0.55
    Accessible.role: Accessible.CheckBox
    Accessible.name: control.text
    Accessible.checkable: true
    Accessible.checked: control.checked
    Accessible.onPressAction: { control.toggle(); control.toggled(); }
    Accessible.onToggleAction: { control.toggle(); control.toggled(); }

    indicator: Rectangle {
        id: box

        x: control.mirrored ? control.width - width : 0
        y: (control.height - height) / 2
        width: Math.round(Theme.textBody * 1.35)
        height: width
        radius: Theme.gapHair
        color: control.checked ? Theme.tide : Theme.card
        border.width: Theme.hairline
        border.color: control.checked ? Theme.tide : Theme.line

        Text {
            anchors.centerIn: parent
            visible: control.checked
            text: "✓"
            color: Theme.inkOnTide
            font.family: Theme.family
            font.pixelSize: Theme.textBody
            font.weight: Font.Bold
            Accessible.ignored: true
        }
        FocusRing {
            shown: control.visualFocus
            radius: Theme.gapHair + 3
        }
    }
    contentItem: Text {
        id: label

        text: control.text
        color: Theme.ink
        font.family: Theme.family
        font.pixelSize: Theme.textBody
        wrapMode: Text.Wrap
        textFormat: Text.PlainText
        horizontalAlignment: Text.AlignLeft
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
}
