// One of the known patients. The chosen one carries a mark, and says so.
import QtQuick
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Theme

T.RadioButton {
    id: line

    property bool chosen: false

    implicitWidth: 20 * Theme.textBody
    implicitHeight: Math.max(Theme.target, words.implicitHeight + 2 * Theme.gapSmall)
    leftPadding: line.mirrored ? Theme.gap : ring.width + 2 * Theme.gapSmall
    rightPadding: line.mirrored ? ring.width + 2 * Theme.gapSmall : Theme.gap
    // Which one is chosen is said from outside.
    checkable: false
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.RadioButton
    Accessible.name: line.text
    Accessible.checkable: true
    Accessible.checked: line.chosen
    Accessible.onPressAction: line.clicked()
    Keys.onReturnPressed: line.clicked()
    Keys.onEnterPressed: line.clicked()

    indicator: Rectangle {
        id: ring

        x: line.mirrored ? line.width - width - Theme.gapSmall : Theme.gapSmall
        y: (line.height - height) / 2
        width: Math.round(Theme.textBody * 1.35)
        height: width
        radius: width / 2
        color: Theme.card
        border.width: Theme.hairline
        border.color: line.chosen ? Theme.tide : Theme.line

        Rectangle {
            objectName: "mark"
            anchors.centerIn: parent
            visible: line.chosen
            width: Math.round(parent.width / 2)
            height: width
            radius: width / 2
            color: Theme.tide
        }
    }
    contentItem: Words {
        id: words

        text: line.text
        strong: line.chosen
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
    background: Rectangle {
        radius: Theme.corner
        color: line.chosen || line.hovered ? Theme.chosen : Theme.card
        border.width: line.chosen ? Theme.focusWidth : Theme.hairline
        border.color: line.chosen ? Theme.tide : Theme.line

        FocusRing {
            shown: line.visualFocus
        }
    }
}
