// Which two groups are held against each other, and what to beware of before reading the answer.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property PracticeBoard practice

    spacing: Theme.gap

    Choice {
        label: qsTr("Compare by")
        options: root.practice.ways
        current: root.practice.way
        onChosen: index => root.practice.way = index
        Layout.fillWidth: true
    }
    RowLayout {
        visible: root.practice.groups.length > 2
        spacing: Theme.gap
        Layout.fillWidth: true

        Picker {
            label: qsTr("First")
            options: root.practice.groups
            current: root.practice.first
            onChosen: index => root.practice.compare(index, root.practice.second)
            Layout.fillWidth: true
        }
        Picker {
            label: qsTr("Second")
            options: root.practice.groups
            current: root.practice.second
            onChosen: index => root.practice.compare(root.practice.first, index)
            Layout.fillWidth: true
        }
    }
    Words {
        text: root.practice.wayCaution
        strong: true
        Layout.fillWidth: true
    }
}
