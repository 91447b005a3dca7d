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
    Words {
        objectName: "newestCorrection"
        visible: root.correction.length > 0
        text: root.correction
        soft: true
        small: true
        Layout.fillWidth: true
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
