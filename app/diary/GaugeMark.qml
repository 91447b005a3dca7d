// One mark of a gauge.
//
// In   points, chosen, wet (below the chosen one), tone, question (for a screen reader), tight (the next one touches it)
import QtQuick
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Theme

T.AbstractButton {
    id: control

    required property int points
    required property bool chosen
    required property bool wet
    required property color tone
    required property string question
    property bool tight: false

    text: Number(control.points).toLocaleString(Qt.locale(), 'f', 0)
    implicitWidth: Theme.target
    implicitHeight: Theme.target
    horizontalPadding: 0
    verticalPadding: 0
    // Drawn apart from its neighbour, while all of it can be touched.
    leftInset: control.tight ? Theme.gapHair / 2 : 0
    rightInset: control.tight ? Theme.gapHair / 2 : 0
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.RadioButton
    Accessible.name: qsTr("%1: %2 of 10").arg(control.question).arg(control.text)
    Accessible.checkable: true
    Accessible.checked: control.chosen
    Accessible.onPressAction: control.clicked()
    Keys.onReturnPressed: control.clicked()

    contentItem: Text {
        text: control.text
        color: control.chosen ? Theme.inkOnTide : Theme.ink
        font.family: Theme.family
        font.pixelSize: Theme.textLarge
        font.weight: control.chosen ? Font.Bold : Font.Normal
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
    background: Rectangle {
        radius: Theme.corner
        color: control.chosen ? control.tone : control.wet || control.down ? Theme.chosen : Theme.card
        border.width: control.chosen ? 0 : Theme.hairline
        border.color: control.wet ? control.tone : Theme.line

        FocusRing {
            shown: control.visualFocus
        }
    }
}
