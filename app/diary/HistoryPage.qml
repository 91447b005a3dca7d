// Everything that was written down, newest first, each with where it is now.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program

    foot: [
        ActButton {
            text: qsTr("Add photographs")
            onClicked: root.program.openPhoto()
            Layout.fillWidth: true
        },
        ActButton {
            text: qsTr("Add an earlier moment")
            onClicked: root.program.openEarlier()
            Layout.fillWidth: true
        }
    ]

    ReplacedLine {
        program: root.program
        Layout.fillWidth: true
    }
    Words {
        visible: root.program.history.entries.length === 0
        text: qsTr("Nothing yet. Your first entry will stand here.")
        soft: true
        Layout.fillWidth: true
    }
    Repeater {
        model: root.program.history.entries

        EntryCard {
            program: root.program
            Layout.fillWidth: true
        }
    }
}
