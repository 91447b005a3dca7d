// What of the queue is shown: who placed the threads, who took the row, the day of recovery.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Desk

PanelFrame {
    id: root

    required property QueueFilter filter

    shown: root.filter.choosing
    title: qsTr("Filter the queue")
    letters: 44
    closePolicy: T.Popup.CloseOnEscape | T.Popup.CloseOnPressOutside
    onOpened: back.forceActiveFocus()
    onLeft: root.filter.choosing = false
    acts: ActButton {
        id: back

        text: qsTr("Back to the queue")
        primary: true
        onClicked: root.filter.choosing = false
    }

    Picker {
        label: qsTr("Threads placed by")
        options: root.filter.placedOptions
        current: root.filter.placed
        onChosen: index => root.filter.choosePlaced(index)
        Layout.fillWidth: true
    }
    Picker {
        label: qsTr("Row taken by")
        options: root.filter.takenOptions
        current: root.filter.taken
        onChosen: index => root.filter.chooseTaken(index)
        Layout.fillWidth: true
    }
    Picker {
        label: qsTr("Day of recovery")
        options: root.filter.dayOptions
        current: root.filter.days
        onChosen: index => root.filter.chooseDays(index)
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("It holds until the desk is locked or somebody else is named.")
        soft: true
        small: true
        Layout.fillWidth: true
    }
}
