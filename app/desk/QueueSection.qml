// The line above those who merely fell silent.
import QtQuick
import Ebbline.Controls
import Ebbline.Theme

Item {
    id: root

    required property string section
    readonly property bool silent: root.section === "silent"

    implicitHeight: root.silent ? words.implicitHeight + 2 * Theme.gap : 0
    visible: root.silent

    Heading {
        id: words

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        level: 2
        text: qsTr("Not heard from: silence is not good news")
    }
}
