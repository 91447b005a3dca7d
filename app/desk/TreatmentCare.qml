// What was said, agreed and seen right after; and what is still missing before it can be recorded.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

GridLayout {
    id: root

    property TreatmentEditor editor
    property real room: 0
    readonly property bool ready: root.editor !== null

    columns: root.room > 56 * Theme.textBody ? 2 : 1
    columnSpacing: Theme.gapPage
    rowSpacing: Theme.gapLarge

    ColumnLayout {
        spacing: Theme.gapSmall
        Layout.fillWidth: true
        Layout.preferredWidth: 1
        Layout.alignment: Qt.AlignTop

        TreatmentWhen {
            editor: root.editor
            room: root.columns === 2 ? (root.room - Theme.gapPage) / 2 : root.room
            Layout.fillWidth: true
        }
        Picker {
            label: qsTr("Threads placed by")
            options: root.ready ? root.editor.placedByNames : []
            current: root.ready ? root.editor.placedBy : -1
            onChosen: index => root.editor.placedBy = index
            Layout.fillWidth: true
        }
        Heading {
            level: 2
            text: qsTr("Care and consent")
            Layout.fillWidth: true
        }
        TickBox {
            text: qsTr("Small dressings on the entry points")
            checked: root.ready && root.editor.dressings
            onToggled: root.editor.dressings = checked
            Layout.fillWidth: true
        }
        TickBox {
            text: qsTr("Cautions explained: what is usual, when to call, what to spare")
            checked: root.ready && root.editor.cautionsGiven
            onToggled: root.editor.cautionsGiven = checked
            Layout.fillWidth: true
        }
        TickBox {
            text: qsTr("Consent to the treatment given")
            checked: root.ready && root.editor.consentGiven
            onToggled: root.editor.consentGiven = checked
            Layout.fillWidth: true
        }
        TickBox {
            text: qsTr("This course may teach the clinic's usual range, without a name")
            checked: root.ready && root.editor.learningConsent
            onToggled: root.editor.learningConsent = checked
            Layout.fillWidth: true
        }
        NoteField {
            label: qsTr("Note")
            value: root.ready ? root.editor.note : ""
            onEdited: text => { if (root.ready) { root.editor.note = text; } }
            Layout.fillWidth: true
        }
        Card {
            visible: root.ready && root.editor.missing.length > 0
            implicitHeight: list.implicitHeight + 2 * Theme.gapSmall
            border.color: Theme.line
            Layout.fillWidth: true

            ColumnLayout {
                id: list

                anchors.left: parent.left
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                anchors.margins: Theme.gap
                spacing: 2

                Words {
                    text: qsTr("Before it can be recorded")
                    strong: true
                    Layout.fillWidth: true
                }
                Repeater {
                    model: root.ready ? root.editor.missing : []

                    Words {
                        required property string modelData

                        text: "· " + modelData
                        Layout.fillWidth: true
                    }
                }
            }
        }
    }
    ColumnLayout {
        spacing: Theme.gapHair
        Layout.fillWidth: true
        Layout.preferredWidth: 1
        Layout.alignment: Qt.AlignTop

        Heading {
            level: 2
            text: qsTr("Right after the treatment, 0 to 10")
            Layout.fillWidth: true
        }
        Words {
            text: qsTr("What you see now, on each side of the patient. Leave a dash where you did not look.")
            soft: true
            Layout.fillWidth: true
        }
        RowLayout {
            spacing: Theme.gap
            LayoutMirroring.enabled: false
            Layout.fillWidth: true

            Item {
                Layout.fillWidth: true
                Layout.preferredWidth: 8 * Theme.textBody
            }
            Words {
                text: qsTr("Right")
                small: true
                soft: true
                Layout.preferredWidth: 8 * Theme.textBody
            }
            Words {
                text: qsTr("Left")
                small: true
                soft: true
                Layout.preferredWidth: 8 * Theme.textBody
            }
        }
        Repeater {
            model: root.ready ? root.editor.baseline : null

            BaselineLine {
                onScored: (side, points) => root.editor.setBaseline(row.symptom, side, points)
                Layout.fillWidth: true
            }
        }
    }
}
