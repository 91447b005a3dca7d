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
    readonly property real bodyWidth: column.width

    ColumnLayout {
        anchors.fill: parent
        anchors.topMargin: Theme.gapLarge
        spacing: Theme.gapSmall

        GridLayout {
            columns: acts.implicitWidth < root.width * 0.5 ? 2 : 1
            columnSpacing: Theme.gap
            rowSpacing: Theme.gapSmall
            Layout.fillWidth: true
            Layout.leftMargin: Theme.gapLarge
            Layout.rightMargin: Theme.gapLarge

            ColumnLayout {
                spacing: 2
                Layout.fillWidth: true

                Heading {
                    text: root.title
                    Layout.fillWidth: true
                }
                Words {
                    visible: root.subtitle.length > 0
                    text: root.subtitle
                    soft: true
                    Layout.fillWidth: true
                }
            }
            RowLayout {
                id: acts

                spacing: Theme.gapSmall
                Layout.alignment: Qt.AlignTop
            }
        }
        Flickable {
            id: area

            contentHeight: root.scrolls ? column.implicitHeight + 2 * Theme.gapLarge : height
            interactive: root.scrolls && contentHeight > height
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            Layout.fillWidth: true
            Layout.fillHeight: true
            ScrollBar.vertical: ScrollBar {
                policy: area.contentHeight > area.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
                Accessible.ignored: true
            }

            FocusFollower {
                area: area
            }
            ColumnLayout {
                id: column

                x: Theme.gapLarge
                y: Theme.gapSmall
                width: area.width - 2 * Theme.gapLarge
                height: root.scrolls ? implicitHeight : area.height - Theme.gapSmall - Theme.gap
                spacing: Theme.gap
            }
        }
    }
}
