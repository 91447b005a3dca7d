// What an entry raised that can wait: what to do, why, and that it was read. It stands until then.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Card {
    id: root

    required property TodayBoard board

    implicitHeight: column.implicitHeight + 2 * Theme.gap
    border.color: Theme.nextDay

    ColumnLayout {
        id: column

        anchors.fill: parent
        anchors.margins: Theme.gap
        spacing: Theme.gapSmall

        Heading {
            text: root.board.adviceTitle
            level: 2
            color: Theme.nextDay
            Layout.fillWidth: true
        }
        Words {
            text: root.board.adviceDoNow
            strong: true
            Layout.fillWidth: true
        }
        Words {
            text: qsTr("Why")
            small: true
            soft: true
            Layout.fillWidth: true
        }
        Words {
            text: root.board.adviceReason
            Layout.fillWidth: true
        }
        ActButton {
            text: qsTr("I have read this")
            hint: qsTr("It stays with your entry, under What I wrote")
            onClicked: root.board.readAdvice()
            Layout.fillWidth: true
        }
    }
}
