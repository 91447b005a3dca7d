// The clinic's protocols in plain words.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property ProtocolBoard board: root.program.protocols

    title: qsTr("Protocols")
    subtitle: qsTr("Care plan, rules and usual range go to the phone together, signed by the clinic, so that they work offline.")

    Choice {
        options: root.board.names
        current: root.board.chosen
        onChosen: index => root.board.chosen = index
        Layout.fillWidth: true
    }
    GridLayout {
        columns: root.bodyWidth > 60 * Theme.textBody ? 2 : 1
        columnSpacing: Theme.gapPage
        rowSpacing: Theme.gapLarge
        Layout.fillWidth: true

        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop

            Heading {
                level: 2
                text: qsTr("What the patient is asked to do")
                Layout.fillWidth: true
            }
            Repeater {
                model: root.board.carePlan

                ProtocolEntry {
                    Layout.fillWidth: true
                }
            }
        }
        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop

            Heading {
                level: 2
                text: qsTr("What raises a finding")
                Layout.fillWidth: true
            }
            Repeater {
                model: root.board.rules

                ProtocolEntry {
                    Layout.fillWidth: true
                }
            }
            Words {
                text: root.board.calibration
                soft: true
                Layout.fillWidth: true
                Layout.topMargin: Theme.gapSmall
            }
            Heading {
                level: 2
                text: qsTr("What counts as usual")
                Layout.fillWidth: true
                Layout.topMargin: Theme.gapLarge
            }
            Words {
                text: root.board.band
                Layout.fillWidth: true
            }
            Heading {
                level: 2
                text: qsTr("Whom the patient calls")
                Layout.fillWidth: true
                Layout.topMargin: Theme.gapLarge
            }
            Words {
                text: root.program.clinic.contactsText
                Layout.fillWidth: true
            }
            ActButton {
                text: qsTr("Change the numbers")
                quiet: true
                onClicked: root.program.openClinic()
            }
        }
    }
}
