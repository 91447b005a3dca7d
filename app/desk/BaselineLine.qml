// The practitioner's own score of one symptom, for each side. The patient's right stands on the
// left, as when facing the patient.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

RowLayout {
    id: root

    required property baselineRow row
    readonly property list<string> points: ["–", "0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10"]
    signal scored(int side, int points)

    spacing: Theme.gap
    LayoutMirroring.enabled: false

    Words {
        text: root.row.name
        Layout.fillWidth: true
        Layout.preferredWidth: 8 * Theme.textBody
        Accessible.ignored: true
    }
    Picker {
        spokenName: qsTr("%1, right").arg(root.row.name)
        options: root.points
        current: root.row.right + 1
        onChosen: index => root.scored(2, index - 1)
        Layout.fillWidth: false
        Layout.preferredWidth: 8 * Theme.textBody
    }
    Picker {
        spokenName: qsTr("%1, left").arg(root.row.name)
        options: root.points
        current: root.row.left + 1
        onChosen: index => root.scored(1, index - 1)
        Layout.fillWidth: false
        Layout.preferredWidth: 8 * Theme.textBody
    }
}
