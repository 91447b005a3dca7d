// What was given against the label's maximum: a bar, the same in words, and whose limit it is.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Card {
    id: root

    property TreatmentEditor editor
    readonly property bool ready: root.editor !== null
    readonly property bool over: root.ready && root.editor.doseWarning.length > 0

    implicitHeight: inside.implicitHeight + 2 * Theme.gapLarge
    border.color: root.over ? Theme.emergency : Theme.hair
    border.width: root.over ? Theme.focusWidth : Theme.hairline

    ColumnLayout {
        id: inside

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.margins: Theme.gapLarge
        spacing: Theme.gapSmall

        Heading {
            level: 2
            text: qsTr("Lidocaine so far")
            Layout.fillWidth: true
        }
        Told {
            visible: root.over
            text: root.ready ? root.editor.doseWarning : ""
            color: Theme.emergency
            font.pixelSize: Theme.textLarge
            Layout.fillWidth: true
        }
        Told {
            text: root.ready ? root.editor.doseProblem : ""
            alarm: true
            Layout.fillWidth: true
        }
        Words {
            visible: text.length > 0
            text: root.ready ? root.editor.doseGiven : ""
            font.pixelSize: Theme.textLarge
            Layout.fillWidth: true
        }
        Item {
            visible: root.ready && root.editor.doseShare.length > 0
            implicitHeight: Theme.textBody
            Layout.fillWidth: true
            Accessible.role: Accessible.ProgressBar
            Accessible.name: root.ready ? root.editor.doseShare : ""

            Rectangle {
                anchors.fill: parent
                radius: height / 2
                color: Theme.paper
                border.width: Theme.hairline
                border.color: Theme.line
            }
            Rectangle {
                anchors.left: parent.left
                height: parent.height
                width: root.ready ? Math.max(height, parent.width * Math.min(1, root.editor.dosePart)) : 0
                radius: height / 2
                color: root.over ? Theme.emergencyFill : Theme.tide
            }
        }
        Words {
            visible: text.length > 0
            text: root.ready ? root.editor.doseShare : ""
            strong: true
            Layout.fillWidth: true
        }
        Words {
            visible: text.length > 0
            text: root.ready ? root.editor.doseMaximum : ""
            Layout.fillWidth: true
        }
        Words {
            visible: text.length > 0
            text: root.ready ? root.editor.doseClinic : ""
            Layout.fillWidth: true
        }
        Words {
            text: root.ready ? root.editor.doseSource : ""
            soft: true
            Layout.fillWidth: true
        }
        Words {
            visible: text.length > 0
            objectName: "trackNote"
            text: root.ready ? root.editor.doseTracks : ""
            soft: true
            Layout.fillWidth: true
        }
        Words {
            text: qsTr("Enter all lidocaine injected today. Creams count toward the same limit, but how much of one is absorbed is not known: none is counted here. Buffering thins the solution; the milligrams stay.")
            small: true
            soft: true
            Layout.fillWidth: true
        }
    }
}
