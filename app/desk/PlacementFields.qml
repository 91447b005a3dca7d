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
    Words {
        visible: text.length > 0
        text: root.ready ? root.editor.caution : ""
        color: Theme.callNow
        strong: true
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }
    Words {
        objectName: "drawnOtherwise"
        visible: text.length > 0
        text: root.ready ? root.editor.drawnOtherwise : ""
        small: true
        soft: true
        Layout.fillWidth: true
    }
    LineField {
        id: pack

        label: qsTr("Code on the pack: scan it, or type it with its brackets")
        problem: root.ready ? root.editor.packProblem : ""
        onAccepted: if (root.editor.takePackCode(pack.field.text)) { pack.field.clear(); }
        // A field lets no control character be typed: the mark after a lot would be lost, and the lot would run on.
        Keys.onPressed: event => {
            if (event.text === "\u001d") {
                pack.field.insert(pack.field.cursorPosition, event.text);
                event.accepted = true;
            }
        }
        Layout.fillWidth: true
    }
    Flow {
        visible: readings.count > 0
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        Repeater {
            id: readings

            model: root.ready ? root.editor.packReadings : []

            ActButton {
                required property string modelData
                required property int index

                objectName: "packReading"
                text: modelData
                quiet: true
                onClicked: {
                    root.editor.takePackReading(index);
                    pack.field.clear();
                }
            }
        }
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
            label: qsTr("Length")
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
    Words {
        visible: text.length > 0
        text: root.ready ? root.editor.doseTracks : ""
        small: true
        color: Theme.callNow
        Layout.fillWidth: true
    }
}
