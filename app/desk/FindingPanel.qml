// What the rules and warning signs found, open ones first, and what was done about each.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property CourseBoard course
    required property CallBoard call
    required property QueueBoard queue
    property string closingBarred

    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: qsTr("Findings")
        Layout.fillWidth: true
    }
    ActButton {
        objectName: "noteCall"
        visible: root.course.openFindings === 0
        text: qsTr("Note a call")
        hint: qsTr("She rang, or somebody spoke with her")
        onClicked: root.call.start(root.course.key)
    }
    Flow {
        visible: root.course.openFindings > 1
        spacing: Theme.gapHair
        Layout.fillWidth: true

        ActButton {
            text: qsTr("Take all")
            onClicked: root.course.takeAll()
        }
        ActButton {
            text: qsTr("Call about all")
            quiet: true
            onClicked: root.call.start(root.course.key)
        }
    }
    UndoBar {
        text: root.queue.undoText
        onUndone: root.queue.undo()
        onForgotten: root.queue.forgetUndo()
        Layout.fillWidth: true
    }
    Words {
        visible: root.course.findings.count === 0
        text: qsTr("No rule and no warning sign has asked for a look.")
        soft: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.closingBarred.length > 0 && root.course.openFindings > 0
        text: root.closingBarred
        soft: true
        Layout.fillWidth: true
    }
    Repeater {
        model: root.course.findings

        FindingCard {
            closingBarred: root.closingBarred
            onEntryWanted: root.course.light(row.entryKey)
            onSeen: root.course.see(row.key)
            onTaken: root.course.take(row.key)
            onCalled: root.call.start(root.course.key, row.key)
            onForward: root.call.startVisit(root.course.key, row.key)
            onClosing: root.course.startClosing(row.key)
            onReopened: root.course.reopen(row.key)
            Layout.fillWidth: true
        }
    }
    Heading {
        visible: root.course.calls.length > 0
        level: 2
        text: qsTr("Calls noted on the course")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.course.calls

        Words {
            required property string modelData

            text: "· " + modelData
            Layout.fillWidth: true
        }
    }
}
