// The top of every page: the way back, the title, and help at the same place everywhere.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Item {
    id: root

    required property DiaryProgram program

    implicitHeight: line.implicitHeight + Theme.gapSmall

    RowLayout {
        id: line

        anchors.fill: parent
        anchors.leftMargin: Theme.gapSmall
        anchors.rightMargin: Theme.gapSmall
        anchors.topMargin: Theme.gapHair
        spacing: Theme.gapHair

        ActButton {
            visible: root.program.backShown
            quiet: true
            text: qsTr("Back")
            onClicked: root.program.back()
        }
        Heading {
            text: root.program.pageTitle
            level: 2
            leftPadding: root.program.backShown ? 0 : Theme.gapSmall
            Layout.fillWidth: true
        }
        ActButton {
            visible: root.program.callShown
            tone: Theme.callNow
            text: qsTr("I need help")
            hint: qsTr("Shows whom to call")
            onClicked: root.program.openCall()
        }
    }
}
