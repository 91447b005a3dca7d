// The chosen thread: where it runs, what it is, and what was injected along it.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    property TreatmentEditor editor
    property real room: 0
    readonly property bool ready: root.editor !== null

    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: root.ready ? qsTr("Thread %L1").arg(root.editor.selected) : ""
        Layout.fillWidth: true
    }
    Told {
        text: root.ready ? root.editor.caution : ""
        alarm: true
        Layout.fillWidth: true
    }
    Words {
        objectName: "drawnOtherwise"
        visible: text.length > 0
        text: root.ready ? root.editor.drawnOtherwise : ""
        small: true
        soft: true
        Layout.fillWidth: true
    }
    PackField {
        editor: root.editor
        Layout.fillWidth: true
    }
    // Placed by their own widths: a layout would keep room for what it once saw wrapped, or none for what wraps later.
    Flow {
        id: fields

        readonly property int columns: Math.max(1, Math.floor(root.room / (12 * Theme.textBody)))
        readonly property real cell: (fields.width - (fields.columns - 1) * fields.spacing - 1) / fields.columns

        spacing: Theme.gapSmall
        Layout.fillWidth: true

        Picker {
            label: qsTr("Side")
            options: [qsTr("Left"), qsTr("Right")]
            current: root.ready ? root.editor.side - 1 : 0
            onChosen: index => root.editor.side = index + 1
            width: fields.cell
        }
        Picker {
            label: qsTr("Zone")
            options: root.ready ? root.editor.zoneNames : []
            current: root.ready ? root.editor.zone - 1 : 0
            onChosen: index => root.editor.zone = index + 1
            width: fields.cell
        }
        Picker {
            label: qsTr("Ends")
            options: root.ready ? root.editor.endingNames : []
            current: root.ready ? root.editor.ending - 1 : 0
            onChosen: index => root.editor.ending = index + 1
            width: fields.cell
        }
        Picker {
            label: qsTr("Material")
            options: root.ready ? root.editor.materialNames : []
            current: root.ready ? root.editor.material - 1 : 0
            onChosen: index => root.editor.material = index + 1
            width: fields.cell
        }
        Picker {
            label: qsTr("Form")
            options: root.ready ? root.editor.formNames : []
            current: root.ready ? root.editor.form - 1 : 0
            onChosen: index => root.editor.form = index + 1
            width: fields.cell
        }
        Picker {
            label: qsTr("Brought in with")
            options: root.ready ? root.editor.instrumentNames : []
            current: root.ready ? root.editor.instrument : 0
            onChosen: index => root.editor.instrument = index
            width: fields.cell
        }
        StepField {
            label: qsTr("Needle or cannula")
            unit: qsTr("G", "needle gauge")
            from: 14
            to: 32
            value: root.ready ? root.editor.gauge : 19
            onMoved: value => root.editor.gauge = value
            width: fields.cell
        }
        StepField {
            label: qsTr("Length of needle or cannula")
            unit: qsTr("mm")
            from: 0
            to: 500
            step: 10
            lowest: "–"
            value: root.ready ? root.editor.instrumentLengthMm : 0
            onMoved: value => root.editor.instrumentLengthMm = value
            width: fields.cell
        }
        StepField {
            label: qsTr("Length of thread")
            unit: qsTr("mm")
            from: 10
            to: 500
            step: 10
            value: root.ready ? root.editor.lengthMm : 100
            onMoved: value => root.editor.lengthMm = value
            width: fields.cell
        }
        StepField {
            label: qsTr("Anaesthetic along it")
            unit: qsTr("mL")
            from: 0
            to: 20
            step: 0.1
            decimals: 1
            value: root.ready ? root.editor.trackMl : 0
            onMoved: value => root.editor.trackMl = value
            width: fields.cell
        }
        Picker {
            label: qsTr("Epinephrine")
            options: root.ready ? root.editor.epinephrineNames : []
            current: root.ready ? root.editor.epinephrine : 0
            onChosen: index => root.editor.epinephrine = index
            width: fields.cell
        }
        LineField {
            label: qsTr("Lot")
            value: root.ready ? root.editor.lot : ""
            onFinished: text => root.editor.lot = text
            width: fields.cell
        }
        LineField {
            label: qsTr("Expiry, year-month-day")
            value: root.ready ? root.editor.expiry : ""
            problem: root.ready ? root.editor.expiryProblem : ""
            onFinished: text => root.editor.expiry = text
            width: fields.cell
        }
        Picker {
            label: qsTr("Redone")
            options: root.ready ? root.editor.redoneNames : []
            current: root.ready ? root.editor.redone : 0
            onChosen: index => root.editor.redone = index
            width: fields.cell
        }
        LineField {
            objectName: "redoneReason"
            visible: root.ready && root.editor.redone > 0
            label: qsTr("Why it was redone")
            value: root.ready ? root.editor.redoneReason : ""
            problem: root.ready ? root.editor.redoneProblem : ""
            onFinished: text => root.editor.redoneReason = text
            width: fields.cell
        }
    }
    Told {
        objectName: "solutionSaid"
        text: root.ready ? root.editor.solutionSaid : ""
        Layout.fillWidth: true
    }
    Words {
        visible: text.length > 0
        text: root.ready ? root.editor.doseTracks : ""
        objectName: "trackNote"
        small: true
        soft: true
        Layout.fillWidth: true
    }
}
