// The face chart with its views and the acts on what is drawn.
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

    spacing: Theme.gapSmall

    Choice {
        options: [qsTr("Front"), qsTr("Patient's left"), qsTr("Patient's right")]
        current: root.ready ? root.editor.view - 1 : 0
        onChosen: index => root.editor.view = index + 1
        Layout.fillWidth: true
    }
    Card {
        Layout.fillWidth: true
        implicitHeight: Math.min(width * 1.3, 620)

        FaceChart {
            id: chart

            objectName: "faceChart"
            anchors.fill: parent
            anchors.margins: Theme.gapSmall
            drawable: true
            view: root.ready ? root.editor.view : 1
            tracks: root.ready ? root.editor.tracks : []
            selected: root.ready ? root.editor.selected : 0
            ink: Theme.ink
            foldColor: Theme.fold
            leftColor: Theme.left
            rightColor: Theme.right
            cautionColor: Theme.inkSoft
            paper: Theme.card
            selectionColor: Theme.tide
            leftWord: qsTr("Patient's left")
            rightWord: qsTr("Patient's right")
            movingZoneWord: qsTr("moves with speech")
            notchWord: qsTr("notch")
            fontFamily: Theme.family
            textSize: Theme.textSmall
            onDrawn: (entry, end) => root.editor.draw(entry, end)
            onMoved: (number, entry, end) => root.editor.move(number, entry, end)
            onChosen: number => root.editor.choose(number)
            Keys.onDeletePressed: root.editor.removeSelected()
            Accessible.role: Accessible.Canvas
            Accessible.name: qsTr("Face chart. Draw threads from the entry point to the end.")
            Accessible.description: chart.cursorText
            Accessible.focusable: true
        }
    }
    Flow {
        spacing: Theme.gapHair
        Layout.fillWidth: true

        ActButton { text: qsTr("Mirror"); quiet: true; hint: qsTr("the chosen thread, to the other side"); enabled: root.ready && root.editor.selected > 0; onClicked: root.editor.mirrorSelected() }
        ActButton { text: qsTr("Mirror all"); quiet: true; enabled: root.ready && root.editor.placements.count > 0; onClicked: root.editor.mirrorAll() }
        ActButton { text: qsTr("Duplicate"); quiet: true; enabled: root.ready && root.editor.selected > 0; onClicked: root.editor.duplicateSelected() }
        ActButton { text: qsTr("Remove"); quiet: true; enabled: root.ready && root.editor.selected > 0; onClicked: root.editor.removeSelected() }
    }
    Told {
        objectName: "mirrorSaid"
        text: root.ready ? root.editor.mirrorSaid : ""
        strong: false
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("Hatched: the zone that moves with speech and chewing, and the notch of the jaw. Common practice, no source.")
        small: true
        soft: true
        Layout.fillWidth: true
    }
}
