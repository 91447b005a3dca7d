// A reminder that was answered today, and the way to say otherwise.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

ColumnLayout {
    id: root

    required property var modelData
    required property TodayBoard board

    spacing: 2

    Words {
        text: root.modelData.title
        strong: true
        Layout.fillWidth: true
    }
    Words {
        text: root.modelData.text
        color: Theme.tide
        small: true
        Layout.fillWidth: true
    }
    ActButton {
        quiet: true
        text: root.modelData.isDone ? qsTr("Not done after all") : qsTr("Done after all")
        hint: root.modelData.title
        onClicked: root.modelData.isDone ? root.board.notDone(root.modelData.key) : root.board.done(root.modelData.key)
        Layout.fillWidth: true
    }
}
