// One reminder that is due: what, why, and what became of it.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Card {
    id: root

    required property var modelData
    required property TodayBoard board
    required property DiaryProgram program

    implicitHeight: column.implicitHeight + 2 * Theme.gap

    ColumnLayout {
        id: column

        anchors.fill: parent
        anchors.margins: Theme.gap
        spacing: Theme.gapSmall

        Words {
            text: root.modelData.title
            strong: true
            Layout.fillWidth: true
        }
        Words {
            text: root.modelData.text
            Layout.fillWidth: true
        }
        Flow {
            id: acts

            spacing: Theme.gapSmall
            Layout.fillWidth: true

            ActButton {
                visible: !root.modelData.isEntry
                text: qsTr("Done")
                hint: root.modelData.title
                onClicked: root.board.done(root.modelData.key)
            }
            ActButton {
                visible: !root.modelData.isEntry
                text: qsTr("Not done")
                hint: root.modelData.title
                onClicked: root.board.notDone(root.modelData.key)
            }
            Repeater {
                model: root.board.laterChoices

                ActButton {
                    required property int index
                    required property string modelData

                    width: Math.min(implicitWidth, acts.width)
                    text: modelData
                    hint: qsTr("Reminds you later: %1").arg(root.modelData.title)
                    onClicked: root.board.later(root.modelData.key, index)
                }
            }
        }
    }
}
