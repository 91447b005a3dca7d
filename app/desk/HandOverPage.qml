// The note for whoever takes over.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property HandOverBoard note: root.program.handOver

    title: qsTr("Hand-over")
    subtitle: root.note.outcome.length > 0 ? root.note.outcome : qsTr("Made from the queue of this moment.")
    actions: [
        ActButton {
            text: qsTr("Copy as text")
            onClicked: root.note.copy()
        },
        ActButton {
            text: qsTr("Save")
            onClicked: root.note.saveAs()
        },
        ActButton {
            text: qsTr("Print")
            primary: true
            onClicked: root.note.print()
        }
    ]

    Shortcut { sequences: [StandardKey.Print]; onActivated: root.note.print() }

    Card {
        visible: root.note.pinned.length > 0
        implicitHeight: pinned.implicitHeight + 2 * Theme.gap
        Layout.fillWidth: true

        RowLayout {
            id: pinned

            x: Theme.gap
            y: Theme.gap
            width: parent.width - 2 * Theme.gap
            spacing: Theme.gap

            Words {
                text: root.note.pinned
                strong: true
                Layout.fillWidth: true
            }
            ActButton {
                text: qsTr("Take it down")
                quiet: true
                onClicked: root.note.takeDown()
            }
        }
    }
    NoteField {
        label: qsTr("A word for whoever takes over; it stays pinned over the queue until somebody takes it down")
        value: root.note.word
        lines: 2
        onEdited: text => root.note.word = text
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Pin it")
        enabled: root.note.word.trim().length > 0
        onClicked: root.note.pin()
    }
    Card {
        implicitHeight: whole.implicitHeight + 2 * Theme.gapLarge
        Layout.fillWidth: true

        Words {
            id: whole

            x: Theme.gapLarge
            y: Theme.gapLarge
            width: parent.width - 2 * Theme.gapLarge
            text: root.note.text
        }
    }
}
