// A page: a scrolling body that follows the keyboard, and one act in reach of the thumb. A foot that
// would leave the body too little room stands at its end instead, unless it has to stay in sight.
//
// In   children as the body; foot (buttons under it); title (shown here when it is set);
//      footStays (the foot is in sight whatever the body says); topOn (back to the top as it changes);
//      titleFolded (a title that has no room above gives its room to the body);
//      alert (a sentence of the body about what is typed: comes into sight as it appears)
// Out  viewHeight (what of the body can be in sight at once); bodyTop (where it would begin under its title)
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

FocusScope {
    id: root

    default property alias body: column.data
    property alias foot: feet.data
    property string title
    property bool footStays: false
    property string topOn
    property bool titleFolded: false
    property Item alert
    readonly property real viewHeight: area.height
    readonly property real bodyTop: root.title.length > 0 ? heading.y + heading.height + Theme.gap : Theme.gapSmall
    readonly property real bodyWidth: Math.min(root.width - 2 * Theme.gap, 560)
    readonly property bool footFlows: !root.footStays && feet.implicitHeight > root.height * 0.35
    readonly property real footHeight: feet.implicitHeight > 0 ? feet.implicitHeight + Theme.gap : 0

    onTopOnChanged: area.contentY = 0

    Flickable {
        id: area

        anchors.fill: parent
        anchors.bottomMargin: root.footFlows ? 0 : root.footHeight
        contentHeight: column.y + column.height + (root.footFlows ? root.footHeight : 0) + Theme.gap
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        ScrollBar.vertical: ScrollBar {
            policy: area.contentHeight > area.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            Accessible.ignored: true
        }

        Heading {
            id: heading

            x: column.x
            y: Theme.gapHair
            width: column.width
            visible: root.title.length > 0 && !root.titleFolded
            text: root.title
            level: 2
        }
        ColumnLayout {
            id: column

            x: (root.width - width) / 2
            y: heading.visible ? heading.y + heading.height + Theme.gap : Theme.gapSmall
            width: root.bodyWidth
            height: implicitHeight
            spacing: Theme.gap
        }
    }
    Rectangle {
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: area.bottom
        visible: !root.footFlows && root.footHeight > 0 && area.contentHeight > area.height
        height: Theme.hairline
        color: Theme.hair
    }
    ColumnLayout {
        id: feet

        parent: root.footFlows ? area.contentItem : root
        x: column.x
        y: root.footFlows ? column.y + column.height + Theme.gap : root.height - height - Theme.gapSmall
        width: column.width
        height: implicitHeight
        spacing: Theme.gapSmall
    }
    FocusFollower {
        area: area
        alert: root.alert
    }
}
