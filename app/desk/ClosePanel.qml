// Closing a finding: what came of it, and a word about it. No outcome, no closing.
//
// In   shown, title, outcomes
// Out  decided(outcome, note), cancelled
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Theme

T.Popup {
    id: root

    property bool shown: false
    property string title
    required property list<string> outcomes
    property int outcome: 0
    property string note
    signal decided(int outcome, string note)
    signal cancelled

    parent: T.Overlay.overlay
    anchors.centerIn: parent
    width: Math.min(parent ? parent.width - 2 * Theme.gapLarge : 400, 40 * Theme.textBody)
    height: Math.min(parent ? parent.height - 2 * Theme.gapLarge : 500, content.implicitHeight + 2 * Theme.gapLarge)
    padding: Theme.gapLarge
    modal: true
    focus: true
    closePolicy: T.Popup.CloseOnEscape
    visible: root.shown
    onOpened: { root.outcome = 0; root.note = ""; }
    onClosed: if (root.shown) { root.cancelled(); }

    background: Card {
        border.color: Theme.line
    }
    T.Overlay.modal: Rectangle {
        color: Qt.rgba(0, 0, 0, 0.35)
    }
    contentItem: Flickable {
        clip: true
        contentHeight: content.implicitHeight
        interactive: contentHeight > height

        ColumnLayout {
            id: content

            width: parent.width
            spacing: Theme.gap

            Heading {
                level: 2
                text: root.title
                Layout.fillWidth: true
            }
            Choice {
                label: qsTr("What came of it")
                options: root.outcomes
                current: root.outcome - 1
                onChosen: index => root.outcome = index + 1
                Layout.fillWidth: true
            }
            NoteField {
                label: qsTr("Note")
                value: root.note
                lines: 2
                onEdited: text => root.note = text
                Layout.fillWidth: true
            }
            RowLayout {
                spacing: Theme.gapSmall

                ActButton {
                    objectName: "closeIt"
                    text: qsTr("Close the finding")
                    primary: true
                    enabled: root.outcome > 0
                    onClicked: root.decided(root.outcome, root.note)
                }
                ActButton {
                    text: qsTr("Keep it open")
                    quiet: true
                    onClicked: root.cancelled()
                }
            }
        }
    }
}
