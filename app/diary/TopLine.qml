// The top of every page: the way back, the title, and help at the same place everywhere. With
// large text the title takes a line of its own.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Item {
    id: root

    required property DiaryProgram program
    readonly property bool large: Theme.textScale > 1

    visible: root.program.callShown || root.program.backShown || root.program.pageTitle.length > 0
    implicitHeight: visible ? lines.implicitHeight + Theme.gapSmall : 0

    ColumnLayout {
        id: lines

        anchors.fill: parent
        anchors.leftMargin: Theme.gapSmall
        anchors.rightMargin: Theme.gapSmall
        anchors.topMargin: Theme.gapHair
        spacing: Theme.gapHair

        RowLayout {
            spacing: Theme.gapHair
            Layout.fillWidth: true

            ActButton {
                visible: root.program.backShown
                quiet: true
                text: qsTr("Back")
                onClicked: root.program.back()
            }
            Heading {
                text: root.large ? "" : root.program.pageTitle
                level: 2
                leftPadding: root.program.backShown ? 0 : Theme.gapSmall
                rightPadding: leftPadding
                Layout.fillWidth: true
                Accessible.ignored: text.length === 0
            }
            ActButton {
                visible: root.program.callShown
                tone: Theme.callNow
                text: qsTr("I need help")
                hint: qsTr("Shows whom to call")
                onClicked: root.program.openCall()
            }
        }
        Heading {
            visible: root.large && root.program.pageTitle.length > 0
            text: root.program.pageTitle
            level: 2
            Layout.fillWidth: true
            Layout.leftMargin: Theme.gapSmall
            Layout.rightMargin: Theme.gapSmall
        }
    }
}
