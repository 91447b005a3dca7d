// Our drawing of a face, turned as the photograph asks for: beside a camera, or over what it sees.
//
// In   chart (which view), over (it lies on a picture), mirrored (the picture is that of a mirror)
import QtQuick
import Ebbline.Face
import Ebbline.Theme

Item {
    id: root

    required property int chart
    property bool over: false
    property bool mirrored: false

    transform: Scale {
        origin.x: root.width / 2
        xScale: root.mirrored ? -1 : 1
    }

    // Two weights of dark and light, so that it stands out from any skin and any wall.
    FaceChart {
        x: 1
        y: 1
        width: root.width
        height: root.height
        visible: root.over
        view: root.chart
        cautionsShown: false
        ink: Theme.dark ? Theme.paper : Theme.ink
        foldColor: "transparent"
        Accessible.ignored: true
    }
    FaceChart {
        width: root.width
        height: root.height
        view: root.chart
        cautionsShown: false
        ink: root.over ? Theme.inkOnAlarm : Theme.ink
        foldColor: root.over ? "transparent" : Theme.fold
        Accessible.ignored: true
    }
}
