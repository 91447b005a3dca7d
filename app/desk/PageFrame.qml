// What every page shares: its title, a line under it, its acts, and a scrolling body that follows
// the keyboard.
//
// In   title, subtitle, actions (buttons at the title), and children as the body
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

FocusScope {
    id: root

    property string title
    property string subtitle
    property alias actions: acts.data
    property bool scrolls: true
    default property alias body: column.data
    /// Known before the body is laid out, so that its columns do not change while it is.
    readonly property real bodyWidth: root.width - 2 * Theme.gapLarge
    /// Where notices and large text leave the body no room beside the head, the head scrolls with it.
    readonly property bool headScrolls: root.scrolls && root.height < head.height + 12 * Theme.textBody

    Item {
        id: still

        x: Theme.gapLarge
        y: Theme.gapLarge
    }
    Item {
        id: head

        readonly property bool mirrored: root.LayoutMirroring.enabled
        readonly property bool beside: acts.implicitWidth < root.width * 0.5

        parent: root.headScrolls ? moving : still
        width: root.bodyWidth
        height: head.beside ? Math.max(titles.height, acts.height) : titles.height + (acts.height > 0 ? Theme.gapSmall : 0) + acts.height

        Item {
            id: titles

            x: head.beside && head.mirrored ? head.width - width : 0
            width: head.beside ? head.width - acts.implicitWidth - Theme.gap : head.width
            height: heading.height + (words.visible ? words.height + 2 : 0)

            Heading {
                id: heading

                width: titles.width
                text: root.title
            }
            Words {
                id: words

                y: heading.height + 2
                width: titles.width
                visible: root.subtitle.length > 0
                text: root.subtitle
                soft: true
            }
        }
        GridLayout {
            id: acts

            width: Math.min(implicitWidth, head.width)
            x: head.beside === head.mirrored ? 0 : head.width - width
            y: head.beside ? 0 : titles.height + Theme.gapSmall
            columns: root.bodyWidth < 30 * Theme.textBody ? 1 : root.bodyWidth < 44 * Theme.textBody ? 3 : 8
            columnSpacing: Theme.gapSmall
            rowSpacing: Theme.gapSmall
        }
    }
    Flickable {
        id: area

        readonly property real headRoom: root.headScrolls ? head.height + Theme.gapLarge : 0

        anchors.fill: parent
        anchors.topMargin: root.headScrolls ? 0 : Theme.gapLarge + head.height + Theme.gapSmall
        contentHeight: root.scrolls ? area.headRoom + column.height + 2 * Theme.gapLarge : height
        interactive: root.scrolls && contentHeight > height
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        ScrollBar.vertical: ScrollBar {
            policy: area.contentHeight > area.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            Accessible.ignored: true
        }

        FocusFollower {
            area: area
        }
        // Before the body, so that the keyboard comes to the head first.
        Item {
            id: moving

            x: Theme.gapLarge
            y: Theme.gapLarge
        }
        ColumnLayout {
            id: column

            x: Theme.gapLarge
            y: area.headRoom + Theme.gapSmall
            width: area.width - 2 * Theme.gapLarge
            spacing: Theme.gap
        }
        Binding {
            target: column
            property: "height"
            value: area.height - Theme.gapSmall - Theme.gap
            when: !root.scrolls
        }
    }
}
