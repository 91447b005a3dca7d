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

    implicitHeight: licence.y + licence.height
    activeFocusOnTab: true
    Accessible.role: Accessible.StaticText
    Accessible.name: [root.notice.name, root.notice.copyright, root.notice.licence].join(". ")
    Accessible.focusable: true

    // One under the other by their own heights: a layout would keep room for what it once saw wrapped.
    Words {
        id: name

        width: root.width
        text: root.notice.name
        strong: true
        Accessible.ignored: true
    }
    Words {
        id: holders

        y: name.height
        width: root.width
        text: root.notice.copyright
        small: true
        Accessible.ignored: true
    }
    Words {
        id: licence

        y: holders.y + holders.height
        width: root.width
        text: root.notice.licence
        small: true
        soft: true
        Accessible.ignored: true
    }
    FocusRing {
        shown: root.activeFocus
    }
}
