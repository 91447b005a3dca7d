// What the patient wrote, newest first.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property RowList entries
    required property CourseBoard course

    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: qsTr("Entries")
        Layout.fillWidth: true
    }
    Words {
        visible: root.entries.count === 0
        text: qsTr("The patient's entries show up here once the phone has sent them.")
        soft: true
        Layout.fillWidth: true
    }
    Repeater {
        model: root.entries

        EntryLine {
            lighted: row.key === root.course.lighted
            Layout.fillWidth: true
        }
    }
}
