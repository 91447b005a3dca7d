// A panel over the page. What stands in it scrolls under its title; its acts stay in reach below.
//
// In   shown, title, letters (how wide, in letters), acts, foot (stays in reach above them), children
// Out  left: Escape, or a touch outside where closePolicy says so
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Theme

T.Popup {
    id: root

    property bool shown: false
    property string title
    property int letters: 40
    property alias acts: acts.data
    property alias foot: foot.data
    default property alias inside: content.data
    signal left

    parent: T.Overlay.overlay
    anchors.centerIn: parent
    width: Math.min(parent ? parent.width - 2 * Theme.gapLarge : 400, root.letters * Theme.textBody)
    height: Math.min(parent ? parent.height - 2 * Theme.gapLarge : 500,
        content.implicitHeight + foot.implicitHeight + acts.implicitHeight + 2 * whole.spacing + 2 * Theme.gapLarge)
    padding: Theme.gapLarge
    modal: true
    focus: true
    closePolicy: T.Popup.CloseOnEscape
    visible: root.shown
    onClosed: if (root.shown) { root.left(); }

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
            contentHeight: content.implicitHeight
            interactive: contentHeight > height
            Layout.fillWidth: true
            Layout.fillHeight: true

            FocusFollower {
                area: area
            }
            ColumnLayout {
                id: content

                width: parent.width
                spacing: Theme.gapSmall

                Heading {
                    level: 2
                    text: root.title
                    Layout.fillWidth: true
                }
            }
        }
        ColumnLayout {
            id: foot

            spacing: Theme.gapSmall
            Layout.fillWidth: true
            Layout.fillHeight: false  // a layout would take what is left for the words
        }
        Flow {
            id: acts

            spacing: Theme.gapSmall
            Layout.fillWidth: true
        }
    }
}
