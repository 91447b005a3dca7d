// Writing down a treatment, in four steps that can be taken in any order.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property TreatmentEditor editor: root.program.treatment

    title: root.editor.correction ? qsTr("Correct the treatment of %1").arg(root.editor.patientName)
           : root.editor.patientName.length > 0 ? qsTr("Treatment of %1").arg(root.editor.patientName) : qsTr("New treatment")
    subtitle: root.editor.kept.length > 0 ? root.editor.kept
              : root.editor.fromDraft ? qsTr("Taken up from the kept draft, %1").arg(root.editor.when) : root.editor.when
    actions: [
        ActButton {
            text: qsTr("Undo")
            enabled: root.editor.canUndo
            onClicked: root.editor.undo()
        },
        ActButton {
            text: qsTr("Redo")
            enabled: root.editor.canRedo
            onClicked: root.editor.redo()
        },
        ActButton {
            objectName: "dropCorrection"
            visible: root.editor.correction
            text: qsTr("Drop the correction")
            hint: qsTr("The record stays as it is.")
            quiet: true
            onClicked: root.editor.dropCorrection()
        },
        ActButton {
            visible: !root.editor.correction
            text: qsTr("Start over")
            hint: qsTr("Empties everything but the patient; can be undone.")
            quiet: true
            onClicked: root.editor.startOver()
        }
    ]

    Shortcut {
        sequences: [StandardKey.Undo]
        onActivated: root.editor.undo()
    }
    Shortcut {
        sequences: [StandardKey.Redo]
        onActivated: root.editor.redo()
    }

    Choice {
        options: root.editor.steps
        current: root.editor.step
        onChosen: index => root.editor.step = index
        Layout.fillWidth: true
    }
    Loader {
        id: step

        source: [root.editor.correction ? "" : "TreatmentPatient.qml", "TreatmentThreads.qml", "TreatmentAnaesthetic.qml", "TreatmentCare.qml"][root.editor.step]
        Layout.fillWidth: true
        Layout.preferredHeight: (step.item as Item)?.implicitHeight ?? 0

        Binding {
            target: step.item
            property: "editor"
            value: root.editor
            when: step.item !== null
        }
        Binding {
            target: step.item
            property: "room"
            value: root.bodyWidth
            when: step.item !== null
        }
    }
    TreatmentCorrection {
        visible: root.editor.correction && (root.editor.step === 0 || root.editor.step === 3)
        editor: root.editor
        Layout.fillWidth: true
    }
    PatientRecord {
        visible: root.editor.step === 0 && root.editor.patientKey.length > 0
        editor: root.program.patient
        patient: root.editor.patientKey
        Layout.fillWidth: true
    }
    Words {
        visible: root.editor.step === 3 && root.program.roles.treating.length > 0
        text: qsTr("%1 What you write is kept as a draft.").arg(root.program.roles.treating)
        strong: true
        Layout.fillWidth: true
    }
    RowLayout {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        ActButton {
            visible: root.editor.step > 0
            text: qsTr("Back")
            onClicked: root.editor.step = root.editor.step - 1
        }
        Item {
            Layout.fillWidth: true
        }
        ActButton {
            visible: root.editor.step < 3
            text: qsTr("Next: %1").arg(root.editor.steps[root.editor.step + 1])
            primary: true
            onClicked: root.editor.step = root.editor.step + 1
            Layout.fillWidth: true
            Layout.maximumWidth: implicitWidth
        }
        ActButton {
            objectName: "record"
            visible: root.editor.step === 3
            text: root.editor.correction ? qsTr("Record the correction") : qsTr("Record the treatment")
            primary: true
            barred: root.program.roles.treating
            enabled: root.editor.missing.length === 0 && barred.length === 0
            onClicked: root.editor.save()
            Layout.fillWidth: true
            Layout.maximumWidth: implicitWidth
        }
    }
}
