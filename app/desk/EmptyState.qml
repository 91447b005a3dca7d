// What will be here, when there is nothing yet.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

ColumnLayout {
    id: root

    property string title
    property string text

    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: root.title
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }
    Words {
        text: root.text
        soft: true
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }
}
