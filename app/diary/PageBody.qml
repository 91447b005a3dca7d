// A page: a scrolling body, and one act in reach of the thumb.
//
// In   children as the body; foot (buttons under it)
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Ebbline.Theme

FocusScope {
    id: root

    default property alias body: column.data
    property alias foot: feet.data
    readonly property real bodyWidth: column.width

    Flickable {
        id: area

        anchors.top: parent.top
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: feet.top
        contentHeight: column.implicitHeight + Theme.gap + Theme.gapLarge
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        ScrollBar.vertical: ScrollBar {
            policy: area.contentHeight > area.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            Accessible.ignored: true
        }

        ColumnLayout {
            id: column

            x: (area.width - width) / 2
            y: Theme.gapSmall
            width: Math.min(area.width - 2 * Theme.gap, 560)
            spacing: Theme.gap
        }
    }
    ColumnLayout {
        id: feet

        x: (root.width - width) / 2
        width: Math.min(root.width - 2 * Theme.gap, 560)
        anchors.bottom: parent.bottom
        anchors.bottomMargin: feet.implicitHeight > 0 ? Theme.gap : 0
        spacing: Theme.gapSmall
    }
}
