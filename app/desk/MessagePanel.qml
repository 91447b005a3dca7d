// Messages with the patient; what is known of each stands under it.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property CourseBoard course

    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: qsTr("Messages")
        Layout.fillWidth: true
    }
    Words {
        visible: root.course.messages.count === 0
        text: qsTr("No message yet.")
        soft: true
        Layout.fillWidth: true
    }
    Repeater {
        model: root.course.messages

        Card {
            id: message

            required property messageRow row

            implicitHeight: words.implicitHeight + 2 * Theme.gapSmall
            color: message.row.ours ? Theme.chosen : Theme.card
            Layout.fillWidth: true
            Layout.leftMargin: message.row.ours ? Theme.gapLarge : 0
            Layout.rightMargin: message.row.ours ? 0 : Theme.gapLarge

            ColumnLayout {
                id: words

                anchors.left: parent.left
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                anchors.leftMargin: Theme.gap
                anchors.rightMargin: Theme.gap
                spacing: 2

                Words {
                    text: message.row.who + " · " + message.row.when
                    small: true
                    soft: true
                    Layout.fillWidth: true
                }
                Words {
                    text: message.row.text
                    Layout.fillWidth: true
                }
                Words {
                    visible: text.length > 0
                    text: message.row.state
                    small: true
                    soft: true
                    Layout.fillWidth: true
                }
            }
        }
    }
    UsualPanel {
        course: root.course
        Layout.fillWidth: true
    }
    NoteField {
        label: qsTr("Write to the patient")
        value: root.course.messageDraft
        lines: 2
        onEdited: text => root.course.messageDraft = text
        Layout.fillWidth: true
    }
    Words {
        visible: text.length > 0
        text: root.course.messageProblem
        small: true
        color: Theme.callNow
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Send")
        enabled: root.course.linked && root.course.messageDraft.trim().length > 0
        onClicked: root.course.send()
    }
}
