// The top of every page: the way back, the title, and help at the same place everywhere. A title
// that does not fit beside them is left to the page.
//
// Out  titleBelow   the page shows the title
import QtQuick
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Item {
    id: root

    required property DiaryProgram program
    readonly property real backRoom: back.visible ? back.implicitWidth + Theme.gapSmall : Theme.gapSmall
    readonly property real helpRoom: help.visible ? help.implicitWidth + Theme.gapSmall : 0
    readonly property bool titleBelow: natural.advanceWidth > root.width - root.backRoom - root.helpRoom - 2 * Theme.gapSmall

    visible: root.program.callShown || root.program.backShown || root.program.pageTitle.length > 0
    implicitHeight: visible ? Math.max(Theme.target, back.height, help.height) + 2 * Theme.gapHair : 0

    ActButton {
        id: back

        anchors.left: parent.left
        anchors.leftMargin: Theme.gapSmall
        anchors.verticalCenter: parent.verticalCenter
        visible: root.program.backShown
        quiet: true
        text: qsTr("Back")
        onClicked: root.program.back()
    }
    Heading {
        anchors.left: parent.left
        anchors.leftMargin: root.backRoom + Theme.gapSmall
        anchors.right: parent.right
        anchors.rightMargin: root.helpRoom + Theme.gapSmall
        anchors.verticalCenter: parent.verticalCenter
        visible: !root.titleBelow && root.program.pageTitle.length > 0
        text: root.program.pageTitle
        level: 2

        TextMetrics {
            id: natural

            text: root.program.pageTitle
            font.family: Theme.family
            font.pixelSize: Theme.textLarge
            font.weight: Font.DemiBold
        }
    }
    ActButton {
        id: help

        anchors.right: parent.right
        anchors.rightMargin: Theme.gapSmall
        anchors.verticalCenter: parent.verticalCenter
        width: Math.min(implicitWidth, root.width - root.backRoom - 2 * Theme.gapSmall)
        visible: root.program.callShown
        tone: Theme.callNow
        text: qsTr("I need help")
        hint: qsTr("Shows whom to call")
        onClicked: root.program.openCall()
    }
}
