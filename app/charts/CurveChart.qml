// One recovery curve inside its band: score 0..10, day 0..21, left to right in every language.
// The only QML file that knows the charting library.
//
// In   picture          what is drawn; its sentence is the accessible text
//      colours, font    from the theme of the program
// Out  plotLeft, plotWidth   where day 0 and day 21 are, for the line of events
import QtCharts
import QtQuick
import Ebbline.Charts

Item {
    id: root

    required property curvePicture picture
    required property color ink
    required property color inkSoft
    required property color line
    required property color sand
    required property color bandEdge
    required property color leftColor
    required property color rightColor
    required property color paper
    required property font font
    readonly property real plotLeft: plot.plotArea.x
    readonly property real plotWidth: plot.plotArea.width

    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Chart
    Accessible.name: root.picture.title
    Accessible.description: root.picture.sentence

    CurvePlot {
        id: plot

        picture: root.picture
        ink: root.ink
        inkSoft: root.inkSoft
        line: root.line
        sand: root.sand
        bandEdge: root.bandEdge
        left: root.leftColor
        right: root.rightColor
        paper: root.paper
        font: root.font
        width: chart.width
        height: chart.height
        Component.onCompleted: plot.attach(anchor)
    }
    ChartView {
        id: chart

        // Never of no size: before a page has its width the library would paint on no picture, and complain.
        width: Math.max(1, root.width)
        height: Math.max(1, root.height)
        antialiasing: true
        backgroundColor: "transparent"
        plotArea: plot.plotArea
        legend.visible: false
        margins { left: 0; top: 0; right: 0; bottom: 0 }

        LineSeries {
            id: anchor
        }
    }
}
