// Asks once more before a photograph of the clinic's is taken back: what goes does not come back.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Card {
    id: root

    required property PhotoComparison comparison

    visible: root.comparison.takeBackQuestion.length > 0
    implicitHeight: lines.implicitHeight + 2 * Theme.gap

    ColumnLayout {
        id: lines

        x: Theme.gap
        y: Theme.gap
        width: parent.width - 2 * Theme.gap
        spacing: Theme.gapSmall

        Words {
            text: root.comparison.takeBackQuestion
            strong: true
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
        }
        Flow {
            spacing: Theme.gapSmall
            Layout.fillWidth: true

            ActButton {
                text: qsTr("Take it back")
                hint: root.comparison.takeBackQuestion
                onClicked: root.comparison.takeBack()
            }
            ActButton {
                text: qsTr("Keep the photograph")
                primary: true
                onClicked: root.comparison.leaveTakingBack()
            }
        }
    }
}
