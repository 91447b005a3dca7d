// The plan beside what is done: marks change once the patient lies down.
//
// In   editor
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Face
import Ebbline.Theme

ColumnLayout {
    id: root

    property TreatmentEditor editor
    readonly property bool ready: root.editor !== null
    readonly property bool drawn: root.ready && root.editor.placements.count > 0
    readonly property bool planned: root.ready && root.editor.planned

    spacing: Theme.gapSmall
    visible: root.planned || (root.drawn && !root.editor.correction)

    Heading {
        visible: root.planned
        level: 2
        text: qsTr("The plan")
        Layout.fillWidth: true
    }
    Words {
        visible: root.planned
        text: root.ready ? root.editor.planText : ""
        Layout.fillWidth: true
    }
    Card {
        visible: root.planned
        implicitHeight: Math.min(width * 1.3, 320)
        Layout.fillWidth: true
        Layout.maximumWidth: 18 * Theme.textBody

        FaceChart {
            anchors.fill: parent
            anchors.margins: Theme.gapSmall
            view: root.ready ? root.editor.view : 1
            tracks: root.planned ? root.editor.planTracks : []
            ink: Theme.ink
            foldColor: Theme.fold
            leftColor: Theme.left
            rightColor: Theme.right
            cautionColor: Theme.inkSoft
            paper: Theme.card
            selectionColor: Theme.tide
            fontFamily: Theme.family
            textSize: Theme.textSmall
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("The plan")
            Accessible.description: root.ready ? root.editor.planText : ""
        }
    }
    Flow {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        ActButton {
            visible: root.drawn && !root.editor.correction
            text: root.planned ? qsTr("Make this the plan") : qsTr("Keep this as the plan")
            hint: qsTr("It stays as it is while you change what is done.")
            quiet: true
            onClicked: root.editor.keepAsPlan()
        }
        ActButton {
            visible: root.planned
            text: qsTr("Drop the plan")
            quiet: true
            onClicked: root.editor.dropPlan()
        }
    }
}
