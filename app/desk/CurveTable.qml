// The table twin of the curves: the same scores, readable without seeing a line.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property RowList rows

    spacing: 0

    TableLine {
        strong: true
        cells: [qsTr("Day"), qsTr("When"), qsTr("Right"), qsTr("Left"), qsTr("Usual"), qsTr("Note")]
        widths: [2, 4, 2, 2, 3, 6]
        Layout.fillWidth: true
    }
    Repeater {
        model: root.rows

        TableLine {
            required property curveTableRow row

            cells: [row.day, row.when, row.right, row.left, row.usual, row.note]
            widths: [2, 4, 2, 2, 3, 6]
            spoken: row.spoken
            Layout.fillWidth: true
        }
    }
    Words {
        visible: root.rows.count === 0
        text: qsTr("Nothing was recorded for this symptom.")
        soft: true
        Layout.fillWidth: true
    }
}
