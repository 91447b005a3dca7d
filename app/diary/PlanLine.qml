// A line of the care plan: what, when or until when, and why.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

ColumnLayout {
    id: root

    required property var modelData

    spacing: 2

    Words {
        text: root.modelData.title
        strong: true
        Layout.fillWidth: true
    }
    Words {
        text: root.modelData.when
        color: Theme.tide
        small: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.modelData.text.length > 0
        text: root.modelData.text
        soft: true
        small: true
        Layout.fillWidth: true
    }
}
