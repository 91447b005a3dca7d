// One part: its name, its holders, its licence; one sentence for a screen reader. The keyboard reaches it, so that
// the page can be read to its end without a mouse.
//
// In   notice
import QtQuick
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

    // By their own heights: a layout would keep room for what it once saw wrapped.
    Column {
        id: words

        width: root.width

        Words {
            text: root.notice.name
            strong: true
            Accessible.ignored: true
            width: words.width
        }
        Words {
            text: root.notice.copyright
            small: true
            Accessible.ignored: true
            width: words.width
        }
        Words {
            text: root.notice.licence
            small: true
            soft: true
            Accessible.ignored: true
            width: words.width
        }
    }
    FocusRing {
        shown: root.activeFocus
    }
}
