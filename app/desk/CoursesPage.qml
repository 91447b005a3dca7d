// All courses, newest treatment first.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program

    title: qsTr("Courses")
    subtitle: root.program.courses.summary
    scrolls: false
    Component.onCompleted: list.forceActiveFocus()

    actions: [
        LineField {
            hint: qsTr("Name or lot")
            value: root.program.courses.search
            onEdited: text => root.program.courses.search = text
            Layout.fillWidth: false
            Layout.preferredWidth: 16 * Theme.textBody
        }
    ]

    Item {
        Layout.fillWidth: true
        Layout.fillHeight: true

        ListView {
            id: list

            objectName: "courses"
            anchors.fill: parent
            anchors.rightMargin: Theme.gap  // for the scroll bar; on the left where text runs from the right
            clip: true
            model: root.program.courses.rows
            activeFocusOnTab: true
            boundsBehavior: Flickable.StopAtBounds
            highlightMoveDuration: Theme.motion
            Keys.onReturnPressed: root.program.openCourse(root.program.courses.rows.keyAt(list.currentIndex))
            Accessible.role: Accessible.List
            Accessible.name: root.program.courses.summary
            ScrollBar.vertical: ScrollBar {
                parent: list.parent
                anchors.top: parent.top
                anchors.bottom: parent.bottom
                anchors.right: parent.right
                policy: list.contentHeight > list.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
                Accessible.ignored: true
            }
            delegate: CourseLine {
                width: list.width
                chosen: ListView.isCurrentItem && list.activeFocus
                onPicked: list.currentIndex = index
                onOpened: root.program.openCourse(row.key)
                onLinking: root.program.openPairing(row.key)
            }
        }
        EmptyState {
            anchors.centerIn: parent
            width: Math.min(parent.width, 30 * Theme.textBody)
            visible: list.count === 0
            title: qsTr("No course")
            text: root.program.courses.emptyText
        }
    }
}
