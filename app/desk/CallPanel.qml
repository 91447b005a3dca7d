// A call: the number in large, what to ask, and what to write down of it.
//
// In   call
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

T.Popup {
    id: root

    required property CallBoard call

    parent: T.Overlay.overlay
    anchors.centerIn: parent
    width: Math.min(parent ? parent.width - 2 * Theme.gapLarge : 400, 48 * Theme.textBody)
    height: Math.min(parent ? parent.height - 2 * Theme.gapLarge : 500,
        content.implicitHeight + whole.spacing + acts.implicitHeight + 2 * Theme.gapLarge)
    padding: Theme.gapLarge
    modal: true
    focus: true
    closePolicy: T.Popup.CloseOnEscape
    visible: root.call.shown
    onClosed: if (root.call.shown) { root.call.leave(); }

    background: Card {
        border.color: Theme.line
    }
    T.Overlay.modal: Rectangle {
        color: Qt.rgba(0, 0, 0, 0.35)
    }
    contentItem: ColumnLayout {
        id: whole

        spacing: Theme.gap

        Flickable {
            id: area

            clip: true
            Layout.fillWidth: true
            Layout.fillHeight: true
            contentHeight: content.implicitHeight
            interactive: contentHeight > height

            FocusFollower {
                area: area
            }
            ColumnLayout {
                id: content

                width: parent.width
                spacing: Theme.gapSmall

                Heading {
                    level: 2
                    text: root.call.title
                    Layout.fillWidth: true
                }
                Words {
                    text: root.call.phone
                    strong: true
                    font.pixelSize: Theme.textDisplay
                    Layout.fillWidth: true
                }
                Words {
                    visible: root.call.others.length > 0
                    text: root.call.others
                    strong: true
                    color: Theme.callNow
                    Accessible.role: Accessible.AlertMessage
                    Layout.fillWidth: true
                }
                Repeater {
                    model: root.call.reasons

                    Words {
                        required property string modelData

                        text: modelData
                        soft: true
                        Layout.fillWidth: true
                    }
                }
                Heading {
                    level: 2
                    text: qsTr("What to ask")
                    topPadding: Theme.gapSmall
                    Layout.fillWidth: true
                }
                Repeater {
                    model: root.call.script

                    Words {
                        required property string modelData
                        required property int index

                        text: qsTr("%L1. %2").arg(index + 1).arg(modelData)
                        Layout.fillWidth: true
                    }
                }
                NoteField {
                    label: qsTr("Note, or message to the patient")
                    value: root.call.note
                    lines: 2
                    onEdited: text => root.call.note = text
                    Layout.topMargin: Theme.gapSmall
                    Layout.fillWidth: true
                }
            }
        }
        Flow {
            id: acts

            spacing: Theme.gapSmall
            Layout.fillWidth: true

            ActButton {
                objectName: "reached"
                text: qsTr("Spoke with her")
                primary: true
                onClicked: root.call.reached()
            }
            ActButton {
                text: qsTr("Not reached")
                onClicked: root.call.notReached()
            }
            ActButton {
                text: qsTr("Visit brought forward")
                onClicked: root.call.broughtForward()
            }
            ActButton {
                text: qsTr("Send as a message")
                enabled: root.call.linked && root.call.note.trim().length > 0
                onClicked: root.call.sendAsMessage()
            }
            ActButton {
                text: qsTr("Not now")
                quiet: true
                onClicked: root.call.leave()
            }
        }
    }
}
