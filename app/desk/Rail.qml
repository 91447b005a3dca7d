// The rail: where one can go, who is here, and how fresh everything is.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Rectangle {
    id: root

    required property DeskProgram program

    implicitWidth: Math.max(176, 14.5 * Theme.textBody)
    color: Theme.card

    Rectangle {
        anchors.right: parent.right
        width: Theme.hairline
        height: parent.height
        color: Theme.hair
    }
    Flickable {
        id: area

        anchors.fill: parent
        contentHeight: Math.max(column.implicitHeight + 2 * Theme.gap, height)
        clip: true

        FocusFollower {
            area: area
        }
        ColumnLayout {
            id: column

            x: Theme.gapSmall
            y: Theme.gap
            width: area.width - 2 * Theme.gapSmall
            height: area.contentHeight - 2 * Theme.gap
            spacing: 2

            Wordmark {
                Layout.leftMargin: Theme.gapSmall
                Layout.rightMargin: Theme.gapSmall
                Layout.fillWidth: true
            }
            Words {
                text: root.program.clinic.clinicName
                soft: true
                small: true
                Layout.leftMargin: Theme.gapSmall
                Layout.rightMargin: Theme.gapSmall
                Layout.bottomMargin: Theme.gap
                Layout.fillWidth: true
            }
            RailButton {
                text: qsTr("Queue")
                mark: root.program.alarm.onRail
                current: ["queue", "handOver"].includes(root.program.page)
                onClicked: root.program.openQueue()
            }
            RailButton {
                text: qsTr("Courses")
                current: ["courses", "course", "followUp", "sheet"].includes(root.program.page)
                         || (root.program.page === "pairing" && !root.program.pairing.forDesk)
                onClicked: root.program.openCourses()
            }
            RailButton {
                text: qsTr("New treatment")
                current: root.program.page === "treatment"
                onClicked: root.program.openTreatment()
            }
            RailButton {
                text: qsTr("Practice")
                current: root.program.page === "practice"
                onClicked: root.program.openPractice()
            }
            RailButton {
                text: qsTr("Protocols")
                current: ["protocols", "protocolEdit", "protocolFile"].includes(root.program.page)
                onClicked: root.program.openProtocols()
            }
            RailButton {
                text: qsTr("Clinic")
                current: ["clinic", "desks", "apply", "keep", "traces"].includes(root.program.page)
                         || (root.program.page === "pairing" && root.program.pairing.forDesk)
                onClicked: root.program.openClinic()
            }
            RailButton {
                text: qsTr("Settings")
                current: ["settings", "notices", "licence"].includes(root.program.page)
                onClicked: root.program.openSettings()
            }
            Item {
                Layout.fillHeight: true
                Layout.minimumHeight: Theme.gap
            }
            Words {
                objectName: "freshness"
                text: root.program.hub.freshness
                soft: true
                small: true
                Layout.leftMargin: Theme.gapSmall
                Layout.rightMargin: Theme.gapSmall
                Layout.fillWidth: true
            }
            RailButton {
                text: root.program.hub.busy ? qsTr("Asking the hub") : qsTr("Ask the hub now")
                enabled: !root.program.hub.busy
                onClicked: root.program.hub.syncNow()
            }
            Rectangle {
                color: Theme.hair
                implicitHeight: Theme.hairline
                Layout.fillWidth: true
                Layout.topMargin: Theme.gapSmall
                Layout.bottomMargin: Theme.gapSmall
            }
            RailButton {
                text: root.program.clinic.person.length > 0 ? root.program.clinic.person : qsTr("Nobody named")
                hint: qsTr("Who is at the desk: change")
                onClicked: root.program.whoAmI()
            }
            RailButton {
                text: qsTr("Keys and help")
                onClicked: root.program.helpShown = true
            }
            RailButton {
                text: qsTr("Lock")
                onClicked: root.program.lock()
            }
        }
    }
}
