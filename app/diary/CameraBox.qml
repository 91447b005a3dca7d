// What the camera sees while it looks for the clinic's code.
import QtQuick
import QtMultimedia
import Ebbline.Controls
import Ebbline.Diary

Card {
    id: root

    required property JoinBoard board

    implicitHeight: width * 0.75
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("Camera: hold it over the code")

    VideoOutput {
        id: output

        anchors.fill: parent
        anchors.margins: 2
    }
    CameraView {
        board: root.board
        sink: root.visible ? output.videoSink : null
    }
}
