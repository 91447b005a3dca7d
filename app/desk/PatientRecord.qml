// What is on record of a patient was corrected, when and by whom; and the way to correct it.
//
// In   editor, patient (her key), correction (the newest; all of them stand on the panel), crossed (empty: no)
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property PatientEditor editor
    required property string patient
    property string correction
    property string crossed

    spacing: Theme.gapSmall

    Told {
        text: root.crossed
        Layout.fillWidth: true
    }
    // Made when there is something to say: a line that appears keeps the height of its first word.
    Repeater {
        model: root.correction.length > 0 ? [root.correction] : []

        Words {
            required property string modelData

            objectName: "newestCorrection"
            text: modelData
            soft: true
            small: true
            Layout.fillWidth: true
            Layout.preferredWidth: 1
        }
    }
    ActButton {
        objectName: "correctPatient"
        visible: root.patient.length > 0
        text: qsTr("Correct name, number, language")
        hint: qsTr("What was written before stays on record")
        quiet: true
        onClicked: root.editor.open(root.patient)
    }
    UndoBar {
        text: root.editor.undoText
        onUndone: root.editor.undo()
        onForgotten: root.editor.forgetUndo()
        Layout.fillWidth: true
    }
}
