// A symptom to look at: its name, its last scores, and its curve in small.
import QtQuick
import QtQuick.Templates as T
import Ebbline.Charts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

T.AbstractButton {
    id: control

    required property symptomTab row
    property bool current: false

    text: control.row.name
    implicitWidth: Math.max(5.9 * Theme.textBody, inside.implicitWidth + Theme.gapSmall + Theme.gapHair)
    implicitHeight: Math.max(Theme.target, inside.implicitHeight + Theme.gapSmall)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.PageTab
    Accessible.name: control.text
    Accessible.description: control.row.spoken
    Accessible.selectable: true
    Accessible.selected: control.current
    Accessible.onPressAction: control.clicked()
    Keys.onReturnPressed: control.clicked()

    contentItem: Item {
        Column {
            id: inside

            anchors.centerIn: parent
            spacing: 1

            Words {
                text: control.row.name
                strong: control.current
                color: control.current ? Theme.tide : Theme.ink
                Accessible.ignored: true
            }
            Sparkline {
                width: 4.9 * Theme.textBody
                height: 1.5 * Theme.textBody
                leftCurve: control.row.leftCurve
                rightCurve: control.row.rightCurve
                leftColor: Theme.left
                rightColor: Theme.right
                sand: Theme.sand
                line: Theme.line
                Accessible.ignored: true
            }
            Words {
                text: control.row.last
                small: true
                soft: true
                Accessible.ignored: true
            }
        }
    }
    background: Rectangle {
        radius: Theme.corner
        color: control.current ? Theme.card : control.hovered ? Theme.chosen : "transparent"
        border.width: control.current ? Theme.focusWidth : Theme.hairline
        border.color: control.current ? Theme.tide : Theme.hair

        FocusRing {
            shown: control.visualFocus
        }
    }
}
