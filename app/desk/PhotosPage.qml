// Two photographs of one view beside each other.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property PhotoBoard photos: root.program.photos
    readonly property PhotoComparison comparison: root.photos.comparison
    /// Known before the halves are laid out: what was wrapped in a narrower one keeps that height.
    readonly property real halfWidth: (root.bodyWidth - Theme.gap) / 2
    readonly property real frameHeight: Math.max(18 * Theme.bodySize, Math.min(root.height * 0.49, root.bodyWidth * 0.62))

    title: root.photos.who
    subtitle: qsTr("Photographs side by side")
    actions: [
        ActButton {
            text: qsTr("Back to the course")
            onClicked: root.program.openCourse(root.photos.course)
        }
    ]

    Choice {
        options: root.comparison.views
        current: root.comparison.view
        onChosen: index => root.comparison.view = index
        Layout.fillWidth: true
    }
    Words {
        visible: text.length > 0
        text: root.comparison.how
        Layout.fillWidth: true
    }
    Words {
        visible: root.comparison.marking < 0
        text: qsTr("Light, distance and expression differ from one photograph to the next. What looks like a change may be one of them: compare with care, and look at the patient before you decide.")
        soft: true
        small: true
        Layout.fillWidth: true
    }
    PhotoMarking {
        comparison: root.comparison
        Layout.fillWidth: true
    }
    TakeBackPhoto {
        comparison: root.comparison
        Layout.fillWidth: true
    }
    // Earlier on the left in every language, as time runs along the curves.
    GridLayout {
        columns: 2
        columnSpacing: Theme.gap
        layoutDirection: Qt.LeftToRight
        LayoutMirroring.enabled: false
        Layout.fillWidth: true

        PhotoHalf {
            comparison: root.comparison
            half: PhotoComparison.Earlier
            side: root.comparison.earlier
            frameHeight: root.frameHeight
            Layout.fillWidth: true
            Layout.preferredWidth: root.halfWidth
            Layout.alignment: Qt.AlignTop
            Layout.fillHeight: false
        }
        PhotoHalf {
            comparison: root.comparison
            half: PhotoComparison.Later
            side: root.comparison.later
            frameHeight: root.frameHeight
            Layout.fillWidth: true
            Layout.preferredWidth: root.halfWidth
            Layout.alignment: Qt.AlignTop
            Layout.fillHeight: false
        }
    }
    Flow {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        ActButton {
            text: qsTr("Closer")
            hint: root.comparison.zoomText
            onClicked: root.comparison.zoomIn()
        }
        ActButton {
            text: qsTr("Farther")
            hint: root.comparison.zoomText
            onClicked: root.comparison.zoomOut()
        }
        ActButton {
            text: qsTr("Whole picture")
            onClicked: root.comparison.whole()
        }
        Words {
            height: Math.max(Theme.target, implicitHeight)
            verticalAlignment: Text.AlignVCenter
            text: qsTr("Zoom of both: %1").arg(root.comparison.zoomText)
            soft: true
        }
    }
    Words {
        visible: text.length > 0
        text: root.comparison.sides
        soft: true
        Layout.fillWidth: true
    }
}
