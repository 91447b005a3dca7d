// A page: a scrolling body, and one act in reach of the thumb.
//
// In   children as the body; foot (buttons under it)
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Ebbline.Theme

ColumnLayout {
    id: root

    default property alias body: column.data
    property alias foot: feet.data
    readonly property real bodyWidth: column.width

    spacing: 0

    Flickable {
        id: area

        contentHeight: column.implicitHeight + Theme.gap + Theme.gapLarge
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        Layout.fillWidth: true
        Layout.fillHeight: true
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

        spacing: Theme.gapSmall
        Layout.fillWidth: true
        Layout.maximumWidth: 560
        Layout.alignment: Qt.AlignHCenter
        Layout.leftMargin: Theme.gap
        Layout.rightMargin: Theme.gap
        Layout.topMargin: Theme.gapSmall
        Layout.bottomMargin: Theme.gap
    }
}
