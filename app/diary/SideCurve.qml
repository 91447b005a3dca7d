// A curve of one side inside its band, small; the sentence says it in words.
import QtQuick
import QtQuick.Layouts
import Ebbline.Charts
import Ebbline.Controls
import Ebbline.Theme

ColumnLayout {
    id: root

    required property curvePicture modelData

    spacing: 2

    Words {
        text: root.modelData.title
        color: root.modelData.left ? Theme.left : Theme.right
        small: true
        strong: true
        Layout.fillWidth: true
        Accessible.ignored: true
    }
    CurveChart {
        picture: root.modelData
        ink: Theme.ink
        inkSoft: Theme.inkSoft
        line: Theme.line
        sand: Theme.sand
        bandEdge: Theme.bandEdge
        leftColor: Theme.left
        rightColor: Theme.right
        paper: Theme.paper
        font: Qt.font({ family: Theme.family, pixelSize: Math.min(Theme.textSmall * 0.75, Theme.bodySize) })
        implicitHeight: 130
        Layout.fillWidth: true
    }
    Words {
        text: root.modelData.sentence
        small: true
        Layout.fillWidth: true
        Accessible.ignored: true
    }
}
