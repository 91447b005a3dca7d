// What the camera sees, with the drawing over it, and the way to another camera.
import QtQuick
import QtMultimedia
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

ColumnLayout {
    id: root

    required property PhotoBoard board
    required property real mostHeight

    spacing: Theme.gapSmall

    Card {
        implicitHeight: Math.min(width * 1.25, root.mostHeight)
        clip: true
        Layout.fillWidth: true
        Layout.fillHeight: false
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Camera, with a drawing of a face to fit yours into")

        VideoOutput {
            id: output

            anchors.fill: parent
            anchors.margins: 2
            transform: Scale {
                origin.x: output.width / 2
                xScale: camera.flipped ? -1 : 1
            }
        }
        PhotoGuide {
            anchors.fill: parent
            anchors.margins: Theme.gap
            chart: root.board.chart
            over: camera.live
            mirrored: camera.mirrored
        }
        PhotoCamera {
            id: camera

            board: root.board
            sink: root.visible ? output.videoSink : null
        }
    }
    Told {
        text: camera.problem
        Layout.fillWidth: true
    }
    ActButton {
        visible: camera.several
        text: qsTr("Use the other camera")
        onClicked: camera.turn()
        Layout.fillWidth: true
    }
}
