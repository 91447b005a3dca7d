// The keys of the desk and how to turn the single ones off, always reachable with F1.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PanelFrame {
    id: root

    required property DeskProgram program

    shown: root.program.helpShown
    title: qsTr("Keys")
    letters: 44
    closePolicy: T.Popup.CloseOnEscape | T.Popup.CloseOnPressOutside
    onLeft: root.program.helpShown = false
    acts: ActButton {
        text: qsTr("Back to work")
        primary: true
        onClicked: root.program.helpShown = false
    }

    Repeater {
        model: [[qsTr("Up, Down"), qsTr("move in the queue")], [qsTr("Enter"), qsTr("open the course")],
                ["E", qsTr("open the course at the entry behind the reason")],
                ["T", qsTr("take it: others see who is on it")], ["C", qsTr("call: number, what to ask, what was said")],
                ["X", qsTr("close the most urgent finding, with an outcome")], ["F", qsTr("bring the visit forward: its new day and time")],
                ["N", qsTr("next with entries that nobody opened")], ["H", qsTr("hand over")], ["/", qsTr("search")], ["A", qsTr("take search and filters off")],
                ["Ctrl+1, Ctrl+2", qsTr("queue, courses")], ["Ctrl+N", qsTr("new treatment")], ["Ctrl+P", qsTr("print the sheet, the course or the hand-over")],
                ["Ctrl+L", qsTr("lock")], ["F1, ?", qsTr("this help")],
                [qsTr("On the face chart"), qsTr("arrows move the cursor (with Shift in small steps), Space sets entry point and end, Escape starts over; Page Up and Page Down choose a thread, Home takes its entry point and End its end, Space puts it down, Delete removes the thread")],
                [qsTr("On photographs"), qsTr("+ and - zoom both, 0 shows the whole, arrows move what is in sight; while the eyes are marked, arrows move the cursor (with Shift in small steps), Space marks, Backspace undoes, Escape ends")]]

        RowLayout {
            id: line

            required property var modelData

            spacing: Theme.gap
            Layout.fillWidth: true

            Words {
                text: line.modelData[0]
                strong: true
                Layout.preferredWidth: 10 * Theme.textBody
                Layout.alignment: Qt.AlignTop
            }
            Words {
                text: line.modelData[1]
                Layout.fillWidth: true
            }
        }
    }
    TickBox {
        text: qsTr("Single keys (E, T, C, X, F, N, H, A, /) are on")
        checked: root.program.settings.singleKeys
        onToggled: root.program.settings.singleKeys = checked
        Layout.fillWidth: true
    }
}
