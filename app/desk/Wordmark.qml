// The name over its waterline.
import QtQuick
import QtQuick.Shapes
import Ebbline.Theme

Column {
    id: root

    spacing: 2

    Text {
        text: "Ebbline"
        color: Theme.ink
        font.family: Theme.family
        font.pixelSize: Theme.textLarge
        font.weight: Font.DemiBold
        font.letterSpacing: 0.4
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Shape {
        width: Theme.textLarge * 4
        height: 7

        ShapePath {
            strokeColor: Theme.tide
            strokeWidth: 1.6
            fillColor: "transparent"
            capStyle: ShapePath.RoundCap
            startX: 1
            startY: 4
            PathCubic { relativeX: Theme.textLarge * 1.4; relativeY: 0; relativeControl1X: Theme.textLarge * 0.5; relativeControl1Y: -5; relativeControl2X: Theme.textLarge * 0.9; relativeControl2Y: 5 }
            PathCubic { relativeX: Theme.textLarge * 1.3; relativeY: 0; relativeControl1X: Theme.textLarge * 0.4; relativeControl1Y: -3; relativeControl2X: Theme.textLarge * 0.8; relativeControl2Y: 3 }
            PathLine { relativeX: Theme.textLarge; relativeY: 0 }
        }
    }
}
