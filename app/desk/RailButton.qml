// A place on the rail. Where one is stands in bold with a bar, not in colour alone.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Theme

T.AbstractButton {
    id: control

    property bool current: false
    property string hint
    property string mark  ///< what needs a look there, in words

    implicitHeight: Math.max(Theme.target, lines.implicitHeight + Theme.gapSmall)
    leftPadding: Theme.gapSmall
    rightPadding: Theme.gapSmall
    focusPolicy: Qt.StrongFocus
    opacity: control.enabled ? 1 : 0.55
    Layout.fillWidth: true
    Accessible.role: Accessible.Button
    Accessible.name: control.mark.length > 0 ? control.text + ": " + control.mark : control.text
    Accessible.description: control.current ? qsTr("shown now") : control.hint
    Accessible.onPressAction: control.clicked()
    Keys.onReturnPressed: control.clicked()

    contentItem: Item {
        implicitHeight: lines.implicitHeight

        Column {
            id: lines

            anchors.verticalCenter: parent.verticalCenter
            width: parent.width

            Text {
                width: parent.width
                text: control.text
                color: control.current ? Theme.tide : Theme.ink
                font.family: Theme.family
                font.pixelSize: Theme.textBody
                font.weight: control.current ? Font.DemiBold : Font.Normal
                wrapMode: Text.Wrap
                textFormat: Text.PlainText
                horizontalAlignment: Text.AlignLeft
                Accessible.ignored: true
            }
            Words {
                width: parent.width
                visible: control.mark.length > 0
                text: control.mark
                small: true
                strong: true
                color: Theme.callNow
                Accessible.ignored: true
            }
        }
    }
    background: Rectangle {
        radius: Theme.corner
        color: control.current || control.hovered ? Theme.chosen : "transparent"

        Rectangle {
            visible: control.current
            anchors.left: parent.left
            anchors.verticalCenter: parent.verticalCenter
            width: 3
            height: parent.height / 2
            radius: 1.5
            color: Theme.tide
        }
        FocusRing {
            shown: control.visualFocus
            anchors.margins: 0
        }
    }
}
