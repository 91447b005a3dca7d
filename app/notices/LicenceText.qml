// The text of the chosen licence, paragraph by paragraph, so that a screen reader can go through it.
// It is in English and runs from left to right whatever the language of the program.
//
// In   board
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Notices
import Ebbline.Theme

ColumnLayout {
    id: root

    required property NoticeBoard board

    spacing: Theme.gapSmall

    Repeater {
        model: root.board.paragraphs

        Words {
            required property string modelData

            text: modelData
            small: true
            LayoutMirroring.enabled: false
            Layout.fillWidth: true
        }
    }
}
