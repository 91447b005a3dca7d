// One photograph, small: touch it to see it large.
import QtQuick
import QtQuick.Templates as T
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

T.AbstractButton {
    id: root

    required property var modelData
    required property DiaryProgram program
    readonly property bool shown: frame.shape > 0

    implicitHeight: box.height + Theme.gapHair + name.height
    focusPolicy: Qt.StrongFocus
    text: root.modelData.title
    onClicked: root.program.openPicture(root.modelData.key)
    Accessible.role: Accessible.Button
    Accessible.name: qsTr("Photograph. %1").arg(root.modelData.title)
    Accessible.description: root.modelData.state
    Accessible.onPressAction: root.clicked()
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    Rectangle {
        id: box

        width: root.width
        height: Math.max(Theme.target, width * 1.25)
        color: Theme.chosen
        border.width: Theme.hairline
        border.color: Theme.line

        PhotoFrame {
            id: frame

            anchors.fill: parent
            anchors.margins: Theme.hairline
            shelf: root.modelData.here ? root.program.history.shelf : null
            photo: root.modelData.key
        }
        FocusRing {
            shown: root.visualFocus
        }
    }
    Words {
        id: name

        y: box.height + Theme.gapHair
        width: root.width
        text: root.modelData.view
        small: true
        horizontalAlignment: Text.AlignHCenter
        Accessible.ignored: true
    }
}
