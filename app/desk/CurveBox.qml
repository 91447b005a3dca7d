// One side's curve with its title and the events under it.
import QtQuick
import Ebbline.Charts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Item {
    id: root

    required property curvePicture picture
    required property var events
    property string eventsSpoken  // of the one box that says them; the other repeats the same line

    implicitHeight: heading.height + upward.height + chart.height + strip.implicitHeight + across.height + 2 * Theme.gapSmall

    Row {
        id: heading

        spacing: Theme.gapSmall

        SideMark {
            anchors.verticalCenter: parent.verticalCenter
            isLeft: root.picture.left
        }
        Words {
            width: Math.min(implicitWidth, root.width - x)
            text: root.picture.title
            strong: true
            color: root.picture.left ? Theme.left : Theme.right
        }
    }
    Words {
        id: upward

        y: heading.height
        width: root.width
        text: qsTr("Score, points of 10")
        small: true
        soft: true
    }
    CurveChart {
        id: chart

        y: heading.height + upward.height + Theme.gapSmall
        width: root.width
        height: Math.min(Math.max(root.width * 0.62, 170), 320)
        picture: root.picture
        ink: Theme.ink
        inkSoft: Theme.inkSoft
        line: Theme.line
        sand: Theme.sand
        bandEdge: Theme.bandEdge
        leftColor: Theme.left
        rightColor: Theme.right
        paper: Theme.card
        font.family: Theme.family
        font.pixelSize: Theme.textSmall
    }
    EventStrip {
        id: strip

        y: chart.y + chart.height + Theme.gapHair
        width: root.width
        height: implicitHeight
        events: root.events
        plotLeft: chart.plotLeft
        plotWidth: chart.plotWidth
        ink: Theme.ink
        inkSoft: Theme.inkSoft
        line: Theme.line
        font.family: Theme.family
        font.pixelSize: Theme.textSmall
        Accessible.ignored: root.eventsSpoken.length === 0
        Accessible.role: Accessible.StaticText
        Accessible.name: root.eventsSpoken
    }
    Words {
        id: across

        y: strip.y + strip.height
        width: root.width
        text: qsTr("Days since the treatment")
        horizontalAlignment: Text.AlignRight
        small: true
        soft: true
    }
}
