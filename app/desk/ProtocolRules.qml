// The rules: numbers that a person may set, each with what it is.
//
// In   editor, room
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property ProtocolEditor editor
    property real room: 0

    spacing: Theme.gapSmall

    Words {
        text: qsTr("Warning signs, fever and severe pain are not here: no protocol can delay or soften them. The thresholds of the statistics are calibrated together with the usual range.")
        soft: true
        Layout.fillWidth: true
    }
    Repeater {
        model: root.editor.rules

        ColumnLayout {
            id: rule

            required property ruleRow row

            spacing: Theme.gapHair
            Layout.fillWidth: true

            Heading {
                visible: rule.row.title.length > 0
                level: 2
                text: rule.row.title
                topPadding: Theme.gap
                Layout.fillWidth: true
            }
            StepField {
                label: rule.row.was.length > 0 ? qsTr("%1 (%2)").arg(rule.row.what).arg(rule.row.was) : rule.row.what
                unit: rule.row.unit
                from: rule.row.from
                to: rule.row.to
                value: rule.row.value
                onMoved: value => root.editor.setRule(rule.row.index, value)
                Layout.fillWidth: true
                Layout.maximumWidth: 36 * Theme.textBody
            }
        }
    }
}
