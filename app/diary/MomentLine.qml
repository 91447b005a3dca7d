// Which moment an entry is about, and the way to another.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

ColumnLayout {
    id: root

    required property EntryMoment moment
    required property bool offered  // the way to an earlier moment is shown

    visible: (root.offered || root.moment.earlier) && !root.moment.asking
    spacing: Theme.gapSmall

    Words {
        visible: root.moment.earlier && !root.moment.asking
        text: root.moment.text
        color: Theme.tide
        strong: true
        Layout.fillWidth: true
    }
    Picker {
        visible: root.moment.choosing
        label: qsTr("Day")
        options: root.moment.days
        current: root.moment.day
        onChosen: (index) => root.moment.chooseDay(index)
        Layout.fillWidth: true
    }
    Picker {
        visible: root.moment.choosing
        label: qsTr("Time")
        options: root.moment.times
        current: root.moment.time
        onChosen: (index) => root.moment.chooseTime(index)
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.offered && !root.moment.choosing && !root.moment.asking
        quiet: true
        text: root.moment.earlier ? qsTr("Another time") : qsTr("It was earlier")
        hint: qsTr("Sets the day and time this is about")
        onClicked: root.moment.choose()
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.moment.choosing && root.moment.nowOffered
        quiet: true
        text: qsTr("No, it is about now")
        onClicked: root.moment.useNow()
        Layout.fillWidth: true
    }
}
