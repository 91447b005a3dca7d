// One course in the list of all.
import QtQuick
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

    implicitHeight: Math.max(cells.height, acts.height) + 2 * Theme.gapSmall
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
    Flow {
        id: cells

        readonly property bool wide: root.width > 60 * Theme.textBody
        readonly property real share: (cells.width - 1) / 56  // of the four columns: 14, 17, 15, 10
        readonly property real tallest: Math.max(name.implicitHeight, when.implicitHeight, state.implicitHeight, news.implicitHeight)

        anchors.left: parent.left
        anchors.leftMargin: Theme.gapSmall
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - acts.width - 2 * Theme.gapSmall - Theme.gap

        CourseCell {
            id: name

            width: cells.wide ? 14 * cells.share : cells.width
            height: cells.wide ? cells.tallest : implicitHeight
            text: root.row.name
            strong: true
        }
        CourseCell {
            id: when

            width: cells.wide ? 17 * cells.share : cells.width
            height: cells.wide ? cells.tallest : implicitHeight
            text: root.row.day + " · " + root.row.treated
        }
        CourseCell {
            id: state

            width: cells.wide ? 15 * cells.share : cells.width
            height: cells.wide ? cells.tallest : implicitHeight
            text: root.row.state
            soft: true
        }
        CourseCell {
            id: news

            width: cells.wide ? 10 * cells.share : cells.width
            height: cells.wide ? cells.tallest : implicitHeight
            text: root.row.news
            strong: true
        }
    }
    Row {
        id: acts

        anchors.right: parent.right
        anchors.rightMargin: Theme.gapSmall
        anchors.verticalCenter: parent.verticalCenter
        spacing: Theme.gapSmall

        ActButton {
            // Keeps its place where there are columns, so that they stand under one another.
            visible: enabled || cells.wide
            opacity: enabled ? 1 : 0
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
