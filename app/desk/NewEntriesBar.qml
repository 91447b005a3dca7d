// Entries that arrived while the page was open wait for an act of their own.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Card {
    id: root

    required property CourseBoard course

    visible: root.course.unopenedText.length > 0
    implicitHeight: row.implicitHeight + Theme.gapSmall

    RowLayout {
        id: row

        anchors.fill: parent
        anchors.leftMargin: Theme.gap
        anchors.rightMargin: Theme.gapSmall
        spacing: Theme.gap

        Words {
            text: root.course.unopenedText
            strong: true
            Layout.fillWidth: true
        }
        ActButton {
            text: qsTr("Mark as opened by me")
            quiet: true
            onClicked: root.course.openEntries()
        }
    }
}
