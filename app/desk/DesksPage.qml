// The clinic's desks: which there are, one more, one that is lost, a fresh key.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property DesksBoard board: root.program.desks

    title: qsTr("Desks")
    subtitle: qsTr("Computers that share this clinic. Each has its own passphrase.")
    actions: [
        ActButton {
            text: qsTr("Back to the clinic")
            onClicked: root.program.openClinic()
        }
    ]

    Told {
        text: root.board.outcome
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    Repeater {
        model: root.board.desks

        Card {
            id: card

            required property deskRow row

            implicitHeight: lines.implicitHeight + 2 * Theme.gap
            Layout.fillWidth: true
            Layout.maximumWidth: 46 * Theme.textBody

            ColumnLayout {
                id: lines

                x: Theme.gap
                y: Theme.gap
                width: parent.width - 2 * Theme.gap
                spacing: Theme.gapHair

                Heading {
                    level: 2
                    text: card.row.title
                    Layout.fillWidth: true
                }
                Words {
                    text: card.row.holds
                    Layout.fillWidth: true
                }
                Words {
                    text: card.row.wrote
                    soft: true
                    Layout.fillWidth: true
                }
                LineField {
                    label: qsTr("Number by which the hub knows it")
                    value: card.row.id
                    fixed: true
                    Layout.fillWidth: true
                    Layout.topMargin: Theme.gapSmall
                }
                ActButton {
                    visible: card.row.removable
                    text: qsTr("Shut out: lost or given away")
                    tone: Theme.emergency
                    barred: root.program.roles.desks
                    onClicked: root.board.askRemove(card.row.id)
                    Layout.topMargin: Theme.gapSmall
                }
            }
        }
    }
    Repeater {
        model: root.board.ended

        Words {
            required property string modelData

            text: modelData
            Layout.fillWidth: true
            Layout.maximumWidth: 46 * Theme.textBody
        }
    }
    Words {
        visible: !root.board.owner
        text: qsTr("Only a desk that holds the clinic's root key can add or shut out desks.")
        soft: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.board.owner && root.program.roles.desks.length > 0
        text: root.program.roles.desks
        soft: true
        Layout.fillWidth: true
    }
    Flow {
        visible: root.board.owner
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        ActButton {
            objectName: "addDesk"
            text: qsTr("Add a desk")
            barred: root.program.roles.desks
            primary: true
            onClicked: root.program.openDeskPairing()
        }
        ActButton {
            objectName: "freshKey"
            text: qsTr("Begin a fresh key")
            barred: root.program.roles.desks
            onClicked: root.board.askFreshKey()
        }
    }
    StepPanel {
        shown: root.board.asking
        title: root.board.askTitle
        text: root.board.askText
        act: root.board.askAct
        seconds: root.board.seconds
        problem: root.board.problem
        onDecided: (passphrase, second) => root.board.decide(passphrase, second)
        onLeft: root.board.cancel()
    }
}
