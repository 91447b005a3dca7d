// One part: its name, its holders, its licence; one sentence for a screen reader. The keyboard reaches it, so that
// the page can be read to its end without a mouse.
//
// In   notice
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Notices
import Ebbline.Theme

Item {
    id: root

    required property noticePart notice

    implicitHeight: words.implicitHeight
    activeFocusOnTab: true
    Accessible.role: Accessible.StaticText
    Accessible.name: [root.notice.name, root.notice.copyright, root.notice.licence].join(". ")
    Accessible.focusable: true

    ColumnLayout {
        id: words

        width: root.width
        spacing: 0

        Words {
            text: root.notice.name
            strong: true
            Accessible.ignored: true
            Layout.fillWidth: true
        }
        Words {
            text: root.notice.copyright
            small: true
            Accessible.ignored: true
            Layout.fillWidth: true
        }
        Words {
            text: root.notice.licence
            small: true
            soft: true
            Accessible.ignored: true
            Layout.fillWidth: true
        }
    }
    FocusRing {
        shown: root.activeFocus
    }
}
