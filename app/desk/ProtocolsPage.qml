// The clinic's protocols in plain words.
import QtQuick
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property ProtocolBoard board: root.program.protocols
    readonly property string said: root.program.protocolTaking.problem + root.program.protocolTaking.outcome
    readonly property bool wide: root.bodyWidth > 60 * Theme.textBody
    readonly property real columnWidth: root.wide ? (root.bodyWidth - Theme.gapPage) / 2 : root.bodyWidth

    title: qsTr("Protocols")
    subtitle: qsTr("Care plan, rules and usual range go to the phone together, signed by the clinic, so that they work offline.")
    actions: [
        ActButton {
            text: qsTr("Change it")
            hint: root.board.title
            onClicked: root.program.openProtocolEdit()
        },
        ActButton {
            text: qsTr("Take from a file")
            hint: qsTr("Shows what it is; nothing goes live by it.")
            onClicked: root.program.protocolTaking.choose()
        },
        ActButton {
            text: qsTr("Save as a file")
            hint: qsTr("For the tool, or for a colleague's clinic.")
            onClicked: root.program.protocolTaking.saveAs()
        }
    ]

    Column {
        spacing: Theme.gap

        Told {
            width: root.bodyWidth
            text: root.said
        }
        Choice {
            width: root.bodyWidth
            options: root.board.names
            current: root.board.chosen
            onChosen: index => root.board.chosen = index
        }
        Flow {
            width: root.bodyWidth
            spacing: Theme.gapPage

            Column {
                Heading {
                    level: 2
                    width: root.columnWidth
                    text: qsTr("What the patient is asked to do")
                }
                Repeater {
                    model: root.board.carePlan

                    ProtocolEntry {
                        width: root.columnWidth
                        height: implicitHeight
                    }
                }
            }
            Column {
                Heading {
                    level: 2
                    width: root.columnWidth
                    text: qsTr("What raises a finding")
                }
                Repeater {
                    model: root.board.rules

                    ProtocolEntry {
                        width: root.columnWidth
                        height: implicitHeight
                    }
                }
                Words {
                    width: root.columnWidth
                    topPadding: Theme.gapSmall
                    text: root.board.calibration
                    soft: true
                }
                Heading {
                    level: 2
                    width: root.columnWidth
                    topPadding: Theme.gapLarge
                    text: qsTr("What counts as usual")
                }
                Words {
                    width: root.columnWidth
                    text: root.board.band
                }
                Heading {
                    level: 2
                    width: root.columnWidth
                    topPadding: Theme.gapLarge
                    text: qsTr("Whom the patient calls")
                }
                Words {
                    width: root.columnWidth
                    text: root.program.clinic.contactsText
                }
                ActButton {
                    text: qsTr("Change the numbers")
                    quiet: true
                    onClicked: root.program.openClinic()
                }
            }
        }
    }
}
