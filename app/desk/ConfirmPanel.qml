// A step that is hard to take back: what it does, and a yes or a no.
//
// In   shown, title, text, act (what the button says)
// Out  decided, cancelled
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Theme

T.Popup {
    id: root

    property bool shown: false
    property string title
    property string text
    property string act
    signal decided
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
    onOpened: leave.forceActiveFocus()
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
            Words {
                text: root.text
                Layout.fillWidth: true
            }
            Flow {
                spacing: Theme.gapSmall
                Layout.fillWidth: true

                ActButton {
                    objectName: "confirm"
                    text: root.act
                    primary: true
                    onClicked: root.decided()
                }
                ActButton {
                    id: leave

                    text: qsTr("Leave it as it is")
                    onClicked: root.cancelled()
                }
            }
        }
    }
}
