// What is on record of a patient was corrected, when and by whom; and the way to correct it.
//
// In   editor, patient (her key), correction (the newest; all of them stand on the panel), crossed (empty: no)
import QtQuick
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

// Not a layout: in one, a line that appears later keeps the height that it had before it was as wide as the page.
Column {
    id: root

    required property PatientEditor editor
    required property string patient
    property string correction
    property string crossed

    spacing: Theme.gapSmall

    Told {
        width: root.width
        text: root.crossed
    }
    Words {
        objectName: "newestCorrection"
        width: root.width
        visible: root.correction.length > 0
        text: root.correction
        soft: true
        small: true
    }
    ActButton {
        objectName: "correctPatient"
        width: Math.min(implicitWidth, root.width)
        visible: root.patient.length > 0
        text: qsTr("Correct name, number, language")
        hint: qsTr("What was written before stays on record")
        quiet: true
        onClicked: root.editor.open(root.patient)
    }
    UndoBar {
        width: root.width
        height: implicitHeight
        text: root.editor.undoText
        onUndone: root.editor.undo()
        onForgotten: root.editor.forgetUndo()
    }
}
