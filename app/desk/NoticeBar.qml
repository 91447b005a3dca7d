// A line across the page that says what is wrong and offers the next step. Gone when there is
// nothing to say.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

Rectangle {
    id: root

    property string text
    property string actText
    property bool alarming: false
    signal acted

    visible: root.text.length > 0
    implicitHeight: row.implicitHeight + Theme.gapSmall
    color: Theme.card
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.text

    Rectangle {
        anchors.left: parent.left
        width: 5
        height: parent.height
        color: root.alarming ? Theme.emergency : Theme.callNow
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.hairline
        color: Theme.line
    }
    RowLayout {
        id: row

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.leftMargin: Theme.gapLarge
        anchors.rightMargin: Theme.gap
        spacing: Theme.gap

        Words {
            text: root.text
            strong: true
            Layout.fillWidth: true
        }
        ActButton {
            visible: root.actText.length > 0
            text: root.actText
            quiet: true
            onClicked: root.acted()
        }
    }
}
