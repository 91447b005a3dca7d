// A question in the page, with its two answers: nothing happens before one of them. The keyboard comes to the one that
// changes nothing.
//
// In   question (empty: none, and the card is gone), act and stay (what the two buttons say)
// Out  acted, stayed
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

Card {
    id: root

    required property string question
    required property string act
    required property string stay
    signal acted
    signal stayed

    visible: root.question.length > 0
    onVisibleChanged: if (root.visible) staying.forceActiveFocus(Qt.TabFocusReason)
    implicitHeight: lines.implicitHeight + 2 * Theme.gap

    ColumnLayout {
        id: lines

        x: Theme.gap
        y: Theme.gap
        width: parent.width - 2 * Theme.gap
        spacing: Theme.gapSmall

        Told {
            text: root.question
            Layout.fillWidth: true
        }
        Flow {
            spacing: Theme.gapSmall
            Layout.fillWidth: true

            ActButton {
                id: staying

                text: root.stay
                primary: true
                onClicked: root.stayed()
            }
            ActButton {
                text: root.act
                hint: root.question
                onClicked: root.acted()
            }
        }
    }
}
