// The parts of a program with their holders, and a button for each licence. What it shows is not
// translated: names stay as they are.
//
// In   board; partsWord, licencesWord (headings); hint (what a screen reader adds to a button)
// Out  chosen(licence)
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Notices
import Ebbline.Theme

ColumnLayout {
    id: root

    required property NoticeBoard board
    required property string partsWord
    required property string licencesWord
    property string hint
    signal chosen(string licence)

    spacing: Theme.gapSmall

    Heading {
        text: root.partsWord
        level: 2
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapSmall
    }
    Repeater {
        model: root.board.parts

        PartLine {
            required property noticePart modelData

            notice: modelData
            Layout.fillWidth: true
        }
    }
    Heading {
        text: root.licencesWord
        level: 2
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
    }
    Repeater {
        model: root.board.licences

        ActButton {
            required property string modelData

            text: modelData
            hint: root.hint
            onClicked: root.chosen(modelData)
            Layout.fillWidth: true
        }
    }
}
