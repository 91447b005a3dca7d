// The photographs of a course as a strip, from the first to the newest; and the way to put in the clinic's own.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property PhotoBoard photos
    signal opened(string photo)

    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: qsTr("Photographs")
        Layout.fillWidth: true
    }
    Words {
        text: root.photos.summary.length > 0 ? root.photos.summary : qsTr("The patient's photographs show up here once the phone has sent them. Taking them is the patient's choice.")
        soft: true
        Layout.fillWidth: true
    }
    // Time runs from left to right in every language, as along the curves.
    ListView {
        id: strip

        objectName: "photoStrip"
        visible: count > 0
        implicitHeight: contentItem.childrenRect.height + Theme.gap
        orientation: ListView.Horizontal
        layoutDirection: Qt.LeftToRight
        LayoutMirroring.enabled: false
        spacing: Theme.gapHair
        clip: true
        model: root.photos.rows
        activeFocusOnTab: true
        keyNavigationEnabled: true
        boundsBehavior: Flickable.StopAtBounds
        highlightMoveDuration: Theme.motion
        Keys.onReturnPressed: root.opened(root.photos.rows.keyAt(strip.currentIndex))
        Keys.onEnterPressed: root.opened(root.photos.rows.keyAt(strip.currentIndex))
        Keys.onSpacePressed: root.opened(root.photos.rows.keyAt(strip.currentIndex))
        Layout.fillWidth: true
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Photographs: %1").arg(root.photos.summary)
        Accessible.description: root.photos.spokenAt(strip.currentIndex)
        Accessible.focusable: true
        ScrollBar.horizontal: ScrollBar {
            policy: strip.contentWidth > strip.width ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            Accessible.ignored: true
        }
        delegate: PhotoCard {
            pictures: root.photos.pictures
            current: ListView.isCurrentItem && strip.activeFocus
            onOpened: root.opened(row.key)
        }
    }
    Flow {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        ActButton {
            visible: root.photos.comparable
            text: qsTr("Side by side")
            hint: qsTr("Two photographs of one view beside each other")
            onClicked: root.opened("")
        }
        ActButton {
            visible: root.photos.intake.stage === ClinicPhotos.Away
            quiet: true
            text: qsTr("Add the clinic's photographs")
            hint: qsTr("From right after the treatment, with the clinic's own camera")
            onClicked: root.photos.intake.begin()
        }
    }
    ClinicPhotoForm {
        visible: root.photos.intake.stage !== ClinicPhotos.Away
        intake: root.photos.intake
        who: root.photos.who
        Layout.fillWidth: true
    }
}
