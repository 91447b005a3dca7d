// What was just done, for ten seconds with a way back.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

Card {
    id: root

    property string text
    readonly property int patience: 10000  // ms
    signal undone
    signal forgotten

    visible: root.text.length > 0
    implicitHeight: row.implicitHeight + Theme.gapSmall
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.text

    Timer {
        interval: root.patience
        running: root.visible
        onTriggered: root.forgotten()
    }
    RowLayout {
        id: row

        anchors.fill: parent
        anchors.leftMargin: Theme.gap
        anchors.rightMargin: Theme.gapSmall
        spacing: Theme.gap

        Words {
            text: root.text
            Layout.fillWidth: true
        }
        ActButton {
            text: qsTr("Undo")
            quiet: true
            onClicked: root.undone()
        }
    }
}
