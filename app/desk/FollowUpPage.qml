// What was found and agreed at the follow-up. Recording it closes the course.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property FollowUpEditor editor: root.program.followUp
    readonly property bool wide: root.bodyWidth > 56 * Theme.textBody
    /// Known before the columns are laid out: what was wrapped in a narrower one keeps that height.
    readonly property real columnWidth: root.wide ? (root.bodyWidth - Theme.gapPage) / 2 : root.bodyWidth

    title: qsTr("Follow-up of %1").arg(root.editor.name)
    subtitle: root.editor.recordedBy.length > 0 ? root.editor.recordedBy : qsTr("Recording it closes the course.")
    actions: [
        ActButton {
            text: qsTr("Sheet")
            onClicked: root.program.openSheet(root.editor.key)
        }
    ]

    GridLayout {
        columns: root.wide ? 2 : 1
        columnSpacing: Theme.gapPage
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        ColumnLayout {
            spacing: Theme.gap
            Layout.fillWidth: true
            Layout.preferredWidth: root.columnWidth
            Layout.alignment: Qt.AlignTop
            Layout.fillHeight: false

            Choice {
                label: qsTr("Against before the treatment")
                options: root.editor.changeNames
                current: root.editor.change - 1
                onChosen: index => root.editor.change = index + 1
                Layout.fillWidth: true
            }
            Choice {
                label: qsTr("How satisfied is the patient?")
                options: root.editor.satisfactionNames
                current: root.editor.satisfaction - 1
                onChosen: index => root.editor.satisfaction = index + 1
                Layout.fillWidth: true
            }
            NoteField {
                label: qsTr("Management: what was done")
                value: root.editor.management
                onEdited: text => root.editor.management = text
                Layout.fillWidth: true
            }
            NoteField {
                label: qsTr("Next plan")
                value: root.editor.nextPlan
                lines: 2
                onEdited: text => root.editor.nextPlan = text
                Layout.fillWidth: true
            }
        }
        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true
            Layout.preferredWidth: root.columnWidth
            Layout.alignment: Qt.AlignTop
            Layout.fillHeight: false

            Words {
                text: qsTr("Complications")
                small: true
                soft: true
                Layout.fillWidth: true
            }
            // Placed by their own widths: a layout would keep room for what it once saw wrapped.
            Grid {
                id: grid

                columns: root.bodyWidth > 64 * Theme.textBody ? 2 : 1
                columnSpacing: Theme.gap
                Layout.fillWidth: true
                Layout.preferredWidth: root.columnWidth

                Repeater {
                    model: root.editor.complications

                    ComplicationTick {
                        width: (grid.width - (grid.columns - 1) * grid.columnSpacing) / grid.columns
                        onTicked: on => root.editor.tick(row.word, on)
                    }
                }
            }
            Choice {
                objectName: "uncomplicated"
                label: qsTr("An uncomplicated course?")
                options: [qsTr("Yes"), qsTr("No")]
                current: root.editor.uncomplicated - 1
                enabled: !root.editor.uncomplicatedFixed
                onChosen: index => root.editor.uncomplicated = index + 1
                Layout.fillWidth: true
                Layout.topMargin: Theme.gapSmall
            }
            Repeater {
                model: root.editor.answers

                FollowUpAnswer {
                    program: root.program
                    onChosen: outcome => root.editor.answer(row.key, outcome)
                    Layout.fillWidth: true
                    Layout.topMargin: Theme.gap
                }
            }
            Heading {
                visible: root.editor.openQuestions.length > 0
                level: 2
                text: qsTr("Open questions")
                Layout.fillWidth: true
                Layout.topMargin: Theme.gapLarge
            }
            Repeater {
                model: root.editor.openQuestions

                Words {
                    required property string modelData

                    text: "· " + modelData
                    Layout.fillWidth: true
                    Layout.topMargin: Theme.gapHair
                }
            }
        }
    }
    Repeater {
        model: root.editor.missing

        Words {
            required property string modelData

            text: modelData
            soft: true
            Layout.fillWidth: true
        }
    }
    Words {
        visible: root.program.roles.treating.length > 0
        text: root.program.roles.treating
        strong: true
        Layout.fillWidth: true
    }
    ActButton {
        objectName: "recordFollowUp"
        text: qsTr("Record and close the course")
        primary: true
        barred: root.program.roles.treating
        enabled: root.editor.missing.length === 0 && barred.length === 0
        onClicked: root.editor.save()
    }
}
