// The care plan: every instruction as the clinic reads it, one to change, and a day as the patient sees it.
//
// In   editor, room (width to lay out in)
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

GridLayout {
    id: root

    required property ProtocolEditor editor
    property real room: 0

    columns: root.room > 60 * Theme.textBody ? 2 : 1
    columnSpacing: Theme.gapPage
    rowSpacing: Theme.gapLarge

    ColumnLayout {
        spacing: 0
        Layout.fillWidth: true
        Layout.preferredWidth: 58
        Layout.alignment: Qt.AlignTop

        Repeater {
            model: root.editor.plan

            PlanLine {
                editor: root.editor
                Layout.fillWidth: true
            }
        }
        StepField {
            label: qsTr("Follow-up")
            unit: qsTr("day")
            from: 1
            to: 60
            value: root.editor.followUpDay
            onMoved: value => root.editor.followUpDay = value
            Layout.maximumWidth: 18 * Theme.textBody
            Layout.topMargin: Theme.gap
        }
        Picker {
            label: qsTr("Add an instruction")
            options: root.editor.addable
            current: -1
            onChosen: index => root.editor.addInstruction(index)
            Layout.fillWidth: true
            Layout.topMargin: Theme.gap
        }
    }
    Card {
        implicitHeight: preview.implicitHeight + 2 * Theme.gapLarge
        Layout.fillWidth: true
        Layout.preferredWidth: 42
        Layout.alignment: Qt.AlignTop

        ColumnLayout {
            id: preview

            x: Theme.gapLarge
            y: Theme.gapLarge
            width: parent.width - 2 * Theme.gapLarge
            spacing: Theme.gapSmall

            Heading {
                level: 2
                text: root.editor.previewTitle
                Layout.fillWidth: true
            }
            StepField {
                label: qsTr("Day")
                from: 0
                to: 60
                value: root.editor.previewDay
                onMoved: value => root.editor.previewDay = value
                Layout.fillWidth: true
            }
            Repeater {
                model: root.editor.previewDue

                Words {
                    required property string modelData

                    text: modelData
                    font.pixelSize: Theme.textLarge
                    Layout.fillWidth: true
                }
            }
            Words {
                visible: root.editor.previewRules.length > 0
                text: qsTr("All day")
                strong: true
                Layout.topMargin: Theme.gapSmall
                Layout.fillWidth: true
            }
            Repeater {
                model: root.editor.previewRules

                Words {
                    required property string modelData

                    text: modelData
                    Layout.fillWidth: true
                }
            }
            Words {
                visible: root.editor.previewDue.length === 0 && root.editor.previewRules.length === 0
                text: qsTr("Nothing is asked on this day.")
                soft: true
                Layout.fillWidth: true
            }
            Words {
                text: qsTr("The diary says the same in the patient's language; the clinic's own words stand as they are written.")
                small: true
                soft: true
                Layout.topMargin: Theme.gapSmall
                Layout.fillWidth: true
            }
        }
    }
}
