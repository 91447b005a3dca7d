// What was done, as it was recorded: every thread with its lot and expiry, the anaesthetic, what was agreed.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property CourseBoard course

    visible: root.course.threads.length > 0
    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: qsTr("The treatment")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.course.threads

        Words {
            required property string modelData

            text: modelData
            Layout.fillWidth: true
        }
    }
    Repeater {
        model: root.course.care

        Words {
            required property string modelData

            text: modelData
            Layout.fillWidth: true
        }
    }
}
