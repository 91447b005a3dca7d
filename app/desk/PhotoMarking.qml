// What to mark next, and the acts of marking.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Card {
    id: root

    required property PhotoComparison comparison

    visible: root.comparison.marking >= 0
    implicitHeight: inside.implicitHeight + 2 * Theme.gapSmall

    ColumnLayout {
        id: inside

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.margins: Theme.gap
        spacing: Theme.gapHair

        Told {
            text: root.comparison.prompt
            Layout.fillWidth: true
        }
        Told {
            text: root.comparison.caution
            alarm: true
            Layout.fillWidth: true
        }
        Words {
            text: qsTr("Click or tap, or move the cursor with the arrows (with Shift in small steps) and press Space. Square: right eye. Circle: left eye.")
            small: true
            soft: true
            Layout.fillWidth: true
        }
        Flow {
            spacing: Theme.gapSmall
            Layout.fillWidth: true

            ActButton {
                text: qsTr("Keep the marks")
                primary: true
                enabled: root.comparison.canKeep
                onClicked: root.comparison.keep()
            }
            ActButton {
                text: qsTr("Undo")
                enabled: root.comparison.canUndo
                onClicked: root.comparison.undo()
            }
            ActButton {
                text: qsTr("Leave without keeping")
                quiet: true
                onClicked: root.comparison.leaveMarking()
            }
        }
    }
    Shortcut {
        sequences: [StandardKey.Undo]
        enabled: root.comparison.marking >= 0
        onActivated: root.comparison.undo()
    }
}
