// The text of the chosen licence, paragraph by paragraph: a screen reader and the keyboard go through it.
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
            id: paragraph

            required property string modelData

            text: modelData
            small: true
            activeFocusOnTab: true
            Accessible.focusable: true
            LayoutMirroring.enabled: false
            Layout.fillWidth: true

            FocusRing {
                shown: paragraph.activeFocus
            }
        }
    }
}
