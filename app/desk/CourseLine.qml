// One course in the list of all.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Item {
    id: root

    required property courseRow row
    required property int index
    property bool chosen: false
    signal picked
    signal opened
    signal linking

    implicitHeight: line.implicitHeight + 2 * Theme.gapSmall
    Accessible.role: Accessible.ListItem
    Accessible.name: root.row.spoken
    Accessible.selectable: true
    Accessible.selected: root.chosen
    Accessible.onPressAction: root.opened()

    Rectangle {
        anchors.fill: parent
        color: root.chosen ? Theme.chosen : "transparent"
        radius: Theme.corner
        border.width: root.chosen ? Theme.focusWidth : 0
        border.color: Theme.focus
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.hairline
        color: Theme.hair
    }
    MouseArea {
        anchors.fill: parent
        onClicked: root.picked()
        onDoubleClicked: root.opened()
    }
    RowLayout {
        id: line

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.leftMargin: Theme.gapSmall
        anchors.rightMargin: Theme.gapSmall
        spacing: Theme.gap

        GridLayout {
            columns: root.width > 60 * Theme.textBody ? 4 : 1
            columnSpacing: Theme.gap
            rowSpacing: 2
            Layout.fillWidth: true

            Words {
                text: root.row.name
                strong: true
                Layout.preferredWidth: 14 * Theme.textBody
                Layout.minimumWidth: 4 * Theme.textBody
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignVCenter
            }
            Words {
                text: root.row.day + " · " + root.row.treated
                Layout.preferredWidth: 16 * Theme.textBody
                Layout.minimumWidth: 4 * Theme.textBody
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignVCenter
            }
            Words {
                text: root.row.state
                soft: true
                Layout.preferredWidth: 16 * Theme.textBody
                Layout.minimumWidth: 4 * Theme.textBody
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignVCenter
            }
            Words {
                text: root.row.news
                strong: true
                Layout.preferredWidth: 10 * Theme.textBody
                Layout.minimumWidth: 4 * Theme.textBody
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignVCenter
            }
        }
        ActButton {
            // Keeps its place, so that the columns stand under one another.
            opacity: root.row.linked || root.row.closed ? 0 : 1
            enabled: !root.row.linked && !root.row.closed
            Accessible.ignored: !enabled
            text: qsTr("Link phone")
            quiet: true
            hint: root.row.name
            onClicked: root.linking()
        }
        ActButton {
            text: qsTr("Open")
            hint: root.row.name
            onClicked: root.opened()
        }
    }
}
