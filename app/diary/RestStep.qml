// Temperature and a note, both optional, and what will be saved.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

ColumnLayout {
    id: root

    required property EntryBoard board
    readonly property alias noteAlert: full

    spacing: Theme.gap

    LineField {
        label: qsTr("Temperature, if you measured it")
        value: root.board.temperature
        problem: root.board.temperatureProblem
        numeric: true
        onEdited: (text) => root.board.typeTemperature(text)
        onFinished: (text) => root.board.writeTemperature(text)
        Layout.fillWidth: true
    }
    Choice {
        options: [qsTr("°C"), qsTr("°F")]
        current: root.board.fahrenheit ? 1 : 0
        onChosen: (index) => root.board.fahrenheit = index === 1
        Layout.fillWidth: true
    }
    NoteField {
        id: note

        label: qsTr("In your own words, if you like")
        value: root.board.note
        // What is not kept does not go on standing there. Taken away from the end and before the rest is kept, so that the cursor stays.
        onEdited: (text) => {
            const room = root.board.keptNote(text).length;
            if (text.length > room)
                note.field.remove(room, text.length);
            root.board.writeNote(text);
        }
        Layout.fillWidth: true
    }
    Told {
        id: full

        text: root.board.noteProblem
        alarm: true
        small: true
        Layout.fillWidth: true
    }
    Words {
        visible: text.length > 0
        text: root.board.summary
        soft: true
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.moreOffered
        text: qsTr("Also ask about twinges and numbness")
        onClicked: root.board.askMore()
        Layout.fillWidth: true
    }
    ActButton {
        visible: !root.board.amending && !root.board.throwing
        quiet: true
        tone: Theme.inkSoft
        text: qsTr("Throw this entry away …")
        hint: qsTr("Asks first")
        onClicked: root.board.askDiscard()
        Layout.fillWidth: true
    }
    Told {
        visible: root.board.throwing
        text: root.board.throwText
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.throwing
        text: qsTr("No, keep it")
        onClicked: root.board.keepTyping()
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.throwing
        tone: Theme.callNow
        text: qsTr("Yes, throw it away")
        onClicked: root.board.discard()
        Layout.fillWidth: true
    }
}
