// A button that does something. One primary act a page; quiet ones have no frame.
//
// In   text, primary, quiet, tone (its colour), hint (what a screen reader adds), barred (why it is not for who is here;
//      empty: it is. Whoever sets enabled looks at it, too)
import QtQuick
import QtQuick.Templates as T
import Ebbline.Theme

T.Button {
    id: control

    property bool primary: false
    property bool quiet: false
    property color tone: Theme.tide
    property string hint
    property string barred

    // Not the label's: that one changes with the width that the button is given.
    implicitWidth: Math.max(Theme.target, Math.ceil(natural.implicitWidth) + leftPadding + rightPadding)
    implicitHeight: Math.max(Theme.target, label.implicitHeight + 2 * Theme.gapSmall)
    horizontalPadding: control.quiet ? Theme.gapSmall : Theme.gap
    focusPolicy: Qt.StrongFocus
    enabled: control.barred.length === 0
    opacity: control.enabled ? 1 : 0.55
    Accessible.role: Accessible.Button
    Accessible.name: control.text
    Accessible.description: control.barred.length > 0 ? control.barred : control.hint
    Accessible.onPressAction: if (control.enabled) control.clicked()
    Keys.onReturnPressed: control.clicked()
    Keys.onEnterPressed: control.clicked()

    // Laid out as the label is, and never wrapped: metrics of a font fall short of what shaped letters take.
    Text {
        id: natural

        visible: false
        text: control.text
        font: label.font
        textFormat: Text.PlainText
        Accessible.ignored: true
    }

    contentItem: Text {
        id: label

        text: control.text
        color: control.primary ? Theme.inkOnTide : control.tone
        font.family: Theme.family
        font.pixelSize: Theme.textBody
        font.weight: Font.DemiBold
        wrapMode: Text.Wrap
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        textFormat: Text.PlainText
        Accessible.ignored: true
    }
    background: Rectangle {
        radius: Theme.corner
        color: control.primary ? control.tone : control.down || control.hovered ? Theme.chosen : "transparent"
        border.width: control.primary || control.quiet ? 0 : Theme.hairline
        border.color: control.tone
        opacity: control.primary && (control.down || control.hovered) ? 0.88 : 1

        FocusRing {
            shown: control.visualFocus
        }
    }
}
