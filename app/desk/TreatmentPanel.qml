// What was done, as it was recorded: every thread with its lot and expiry, the anaesthetic, what was agreed; what was corrected of it.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property CourseBoard course
    signal correcting

    visible: root.course.threads.length > 0
    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: qsTr("The treatment")
        Layout.fillWidth: true
    }
    Told {
        text: root.course.recordCrossed
        Layout.fillWidth: true
    }
    Told {
        text: root.course.countedOtherwise
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
    Heading {
        level: 2
        visible: root.course.recordCorrections.length > 0
        text: qsTr("Corrections of the record")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.course.recordCorrections

        Words {
            required property string modelData

            text: modelData
            soft: true
            small: true
            Layout.fillWidth: true
        }
    }
    ActButton {
        objectName: "correctTreatment"
        text: root.course.correctionBegun ? qsTr("Go on with the correction") : qsTr("Correct the treatment")
        hint: qsTr("What was written before stays on record")
        quiet: true
        onClicked: root.correcting()
    }
}
