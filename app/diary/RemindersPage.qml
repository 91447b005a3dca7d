// Whether reminders ring on this device, when they are quiet, and the calendar file.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program
    readonly property ReminderBoard board: root.program.reminders

    FileDialog {
        id: place

        title: qsTr("Where to put the calendar file")
        fileMode: FileDialog.SaveFile
        defaultSuffix: "ics"
        nameFilters: [qsTr("Calendar (*.ics)")]
        onAccepted: root.board.saveCalendar(place.selectedFile)
    }
    Words {
        text: root.board.state
        strong: true
        Layout.fillWidth: true
    }
    TickBox {
        visible: root.board.bellThere
        text: qsTr("Ring for reminders")
        checked: root.board.ringing
        onToggled: root.board.allow(checked)
        Layout.fillWidth: true
    }
    Words {
        visible: root.board.bellThere
        text: qsTr("Others may see your screen. So it only says that there is something for you, never what.")
        soft: true
        Layout.fillWidth: true
    }
    Words {
        visible: text.length > 0
        text: root.board.late
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.late.length > 0
        text: qsTr("Let reminders ring on time")
        onClicked: root.board.askPunctual()
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.board.ringing
        text: qsTr("Ring once to try it")
        onClicked: root.board.tryBell()
        Layout.fillWidth: true
    }
    Told {
        text: root.board.tried
        strong: false
        Layout.fillWidth: true
    }
    TickBox {
        text: qsTr("Quiet at night")
        checked: root.board.quiet
        onToggled: root.board.quiet = checked
        Layout.fillWidth: true
    }
    Picker {
        visible: root.board.quiet
        label: qsTr("Quiet from")
        options: root.board.hours
        current: root.board.quietFrom
        onChosen: (index) => root.board.quietFrom = index
        Layout.fillWidth: true
    }
    Picker {
        visible: root.board.quiet
        label: qsTr("until")
        options: root.board.hours
        current: root.board.quietTo
        onChosen: (index) => root.board.quietTo = index
        Layout.fillWidth: true
    }
    Words {
        visible: root.board.quiet
        text: qsTr("What falls into this time comes when it ends. What is for the evening comes just before it begins.")
        soft: true
        Layout.fillWidth: true
    }
    Heading {
        text: qsTr("In your calendar too")
        level: 2
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("A file for your calendar holds the times only. It says “Reminder from your diary” at each. Many calendars copy what they hold to a server.")
        soft: true
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("When your plan or your visit changes, make the file again. What your calendar took in before stays there until you delete it.")
        soft: true
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Make a calendar file")
        onClicked: place.open()
        Layout.fillWidth: true
    }
    Told {
        text: root.board.calendarOutcome
        strong: false
        Layout.fillWidth: true
    }
}
