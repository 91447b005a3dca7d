// The new day of a visit that is brought forward: what was agreed, what is agreed now, what the phone will show.
//
// In   call
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property CallBoard call

    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: qsTr("The visit")
        topPadding: Theme.gapSmall
        Layout.fillWidth: true
    }
    Words {
        text: root.call.visitAgreed
        Layout.fillWidth: true
    }
    Words {
        visible: text.length > 0
        text: root.call.visitTooLate
        strong: true
        Layout.fillWidth: true
    }
    LineField {
        visible: root.call.visitMovable
        label: qsTr("New day, year-month-day")
        value: root.call.visitDay
        problem: root.call.visitProblem
        onEdited: text => root.call.visitDay = text
        Layout.fillWidth: true
    }
    LineField {
        visible: root.call.visitMovable
        label: qsTr("Time, if one is agreed")
        value: root.call.visitTime
        onEdited: text => root.call.visitTime = text
        Layout.fillWidth: true
    }
    Words {
        visible: text.length > 0
        text: root.call.visitShows
        strong: true
        Layout.fillWidth: true
    }
}
