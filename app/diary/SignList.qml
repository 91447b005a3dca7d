// Reasons to call, one a line, under what to do.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

ColumnLayout {
    id: root

    required property string title
    required property list<string> lines

    spacing: Theme.gapHair

    Heading {
        text: root.title
        level: 2
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapSmall
    }
    Repeater {
        model: root.lines

        RowLayout {
            id: line

            required property string modelData

            spacing: Theme.gapSmall

            Words {
                text: "–"
                Accessible.ignored: true
                Layout.alignment: Qt.AlignTop
            }
            Words {
                text: line.modelData
                Layout.fillWidth: true
            }
        }
    }
}
