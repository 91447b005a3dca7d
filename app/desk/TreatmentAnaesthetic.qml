// The local anaesthetic: the solution, the volumes, and the running total against the label.
import QtQuick
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Flow {
    id: root

    property TreatmentEditor editor
    property real room: 0
    readonly property bool ready: root.editor !== null
    readonly property real columnWidth: root.room > 48 * Theme.textBody ? (root.room - Theme.gapPage) / 2 : root.room

    width: root.room
    spacing: Theme.gapPage

    Column {
        spacing: Theme.gap

        Choice {
            label: qsTr("Solution")
            options: root.ready ? root.editor.drugNames : []
            current: root.ready ? root.editor.drug - 1 : 0
            onChosen: index => root.editor.drug = index + 1
            width: root.columnWidth
            height: implicitHeight
        }
        Choice {
            label: qsTr("Strength")
            options: root.ready ? root.editor.percentNames : []
            current: root.ready ? root.editor.percentIndex : 0
            onChosen: index => root.editor.percentIndex = index
            width: root.columnWidth
            height: implicitHeight
        }
        Choice {
            visible: root.ready && root.editor.drug === 2
            label: qsTr("Epinephrine")
            options: root.ready ? root.editor.dilutionNames : []
            current: root.ready ? root.editor.dilutionIndex : -1
            onChosen: index => root.editor.dilutionIndex = index
            width: root.columnWidth
            height: implicitHeight
        }
        Choice {
            visible: root.ready && root.editor.placements.count > 0
            label: qsTr("Where it held epinephrine, all threads at once")
            options: root.ready ? root.editor.epinephrineNames : []
            current: root.ready ? root.editor.epinephrineOfAll : -1
            onChosen: index => root.editor.epinephrineOfAll = index
            width: root.columnWidth
            height: implicitHeight
        }
        Told {
            text: root.ready ? root.editor.solutionSaid : ""
            width: root.columnWidth
        }
        Choice {
            label: qsTr("Buffered with 8.4% bicarbonate")
            options: root.ready ? root.editor.bufferNames : []
            current: root.ready ? root.editor.bufferIndex : 0
            onChosen: index => root.editor.bufferIndex = index
            width: root.columnWidth
            height: implicitHeight
        }
        StepField {
            label: qsTr("Of this solution outside the tracks: entry points, blocks")
            unit: qsTr("mL")
            from: 0
            to: 100
            step: 0.5
            decimals: 1
            value: root.ready ? root.editor.extraMl : 0
            onMoved: value => root.editor.extraMl = value
            width: Math.min(root.columnWidth, 20 * Theme.textBody)
            height: implicitHeight
        }
        LineField {
            objectName: "otherwise"
            label: qsTr("Lidocaine given otherwise, mg")
            problem: root.ready ? root.editor.otherwiseProblem : ""
            numeric: true
            value: root.ready ? root.editor.otherwise : ""
            onEdited: text => root.editor.otherwise = text
            width: Math.min(root.columnWidth, 20 * Theme.textBody)
            height: implicitHeight
        }
        Words {
            text: qsTr("Nerve blocks, other strengths")
            small: true
            soft: true
            width: Math.min(root.columnWidth, 20 * Theme.textBody)
        }
        LineField {
            objectName: "weight"
            label: qsTr("Weight, kg")
            numeric: true
            value: root.ready ? root.editor.weight : ""
            onEdited: text => root.editor.weight = text
            width: Math.min(root.columnWidth, 20 * Theme.textBody)
            height: implicitHeight
        }
    }
    DoseCard {
        editor: root.editor
        width: root.columnWidth
        height: implicitHeight
    }
}
