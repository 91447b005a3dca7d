// Notes between the patient and the clinic. Not for what is urgent, and it says so.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program

    foot: [
        NoteField {
            label: qsTr("Your note")
            value: root.program.history.noteDraft
            lines: 2
            onEdited: (text) => root.program.history.noteDraft = text
            Layout.fillWidth: true
        },
        ActButton {
            primary: true
            text: qsTr("Send when there is a network")
            enabled: root.program.history.noteDraft.trim().length > 0
            onClicked: if (root.program.history.sendNote()) root.program.syncNow()
            Layout.fillWidth: true
        }
    ]

    ReplacedLine {
        program: root.program
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("The clinic may read this only on the next working day. If it is urgent, call.")
        strong: true
        Layout.fillWidth: true
    }
    Repeater {
        model: root.program.history.notes

        Card {
            id: card

            required property var modelData

            implicitHeight: column.implicitHeight + 2 * Theme.gap
            color: card.modelData.mine ? Theme.chosen : Theme.card
            Layout.fillWidth: true
            Layout.leftMargin: card.modelData.mine ? Theme.gapLarge : 0
            Layout.rightMargin: card.modelData.mine ? 0 : Theme.gapLarge

            ColumnLayout {
                id: column

                anchors.fill: parent
                anchors.margins: Theme.gap
                spacing: Theme.gapHair

                Words {
                    text: card.modelData.from
                    small: true
                    soft: true
                    Layout.fillWidth: true
                }
                Words {
                    text: card.modelData.text
                    Layout.fillWidth: true
                }
                Words {
                    visible: text.length > 0
                    text: card.modelData.state
                    color: Theme.tide
                    small: true
                    Layout.fillWidth: true
                }
            }
        }
    }
}
