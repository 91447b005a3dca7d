// How far a longer piece of work has come.
//
// In   part (0..1), text
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

ColumnLayout {
    id: root

    property real part: 0
    property string text

    spacing: Theme.gapHair
    Accessible.role: Accessible.ProgressBar
    Accessible.name: root.text

    Words {
        text: root.text
        soft: true
        small: true
        Accessible.ignored: true
        Layout.fillWidth: true
    }
    Rectangle {
        implicitHeight: Theme.gapHair
        radius: height / 2
        color: Theme.hair
        Layout.fillWidth: true

        Rectangle {
            width: Math.max(parent.height, parent.width * Math.min(1, root.part))
            height: parent.height
            radius: height / 2
            color: Theme.tide
        }
    }
}
