// One thing that keeps a vault: what it is, what it needs, and its button.
//
// In   title, text, act (what the button says), primary, mayAct, barred (why it is not for who is here), children as what
//      it needs
// Out  acted
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

Card {
    id: root

    property string title
    property string text
    property string act
    property bool primary: false
    property bool mayAct: false
    property string barred
    default property alias needs: needed.data
    signal acted

    implicitHeight: lines.implicitHeight + 2 * Theme.gap
    Layout.fillWidth: true
    Layout.maximumWidth: 46 * Theme.textBody

    ColumnLayout {
        id: lines

        x: Theme.gap
        y: Theme.gap
        width: parent.width - 2 * Theme.gap
        spacing: Theme.gapSmall

        Heading {
            level: 2
            text: root.title
            Layout.fillWidth: true
        }
        Words {
            visible: root.text.length > 0
            text: root.text
            Layout.fillWidth: true
        }
        ColumnLayout {
            id: needed

            visible: needed.children.length > 0
            spacing: Theme.gapSmall
            Layout.fillWidth: true
        }
        ActButton {
            text: root.act
            primary: root.primary
            barred: root.barred
            enabled: root.mayAct && barred.length === 0
            onClicked: root.acted()
        }
    }
}
