// The mark of a side beside its word: solid line and circle for left, dashed line and square for right.
import QtQuick
import QtQuick.Shapes
import Ebbline.Theme

Item {
    id: root

    property bool isLeft: true
    readonly property color tone: root.isLeft ? Theme.left : Theme.right

    width: 2 * Theme.textBody
    height: Theme.textBody
    Accessible.ignored: true

    Shape {
        anchors.fill: parent

        ShapePath {
            strokeColor: root.tone
            strokeWidth: 2
            strokeStyle: root.isLeft ? ShapePath.SolidLine : ShapePath.DashLine
            dashPattern: [3, 2]
            startX: 0
            startY: root.height / 2
            PathLine { x: root.width; y: root.height / 2 }
        }
    }
    Rectangle {
        anchors.centerIn: parent
        width: Theme.textBody * 0.6
        height: width
        radius: root.isLeft ? width / 2 : 0
        color: root.tone
    }
}
