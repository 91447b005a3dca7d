// Taking photographs: which side, how to stand, the camera or a file, and a look before it is kept.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program
    readonly property PhotoBoard board: root.program.photo
    readonly property bool looking: root.board.stage === PhotoBoard.Look
    readonly property bool working: root.board.stage === PhotoBoard.Working
    readonly property bool aiming: root.board.stage === PhotoBoard.Aim
    readonly property bool open: root.aiming && root.board.full.length === 0
    readonly property real mostHeight: Math.max(200, root.height * 0.5)

    foot: [
        ActButton {
            visible: root.looking
            primary: true
            text: qsTr("Keep it")
            hint: root.board.viewName
            onClicked: root.board.keep()
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.looking
            text: qsTr("Take another")
            hint: qsTr("This one is not kept")
            onClicked: root.board.again()
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.open && root.board.live
            primary: true
            text: qsTr("Take the photograph")
            hint: root.board.viewName
            onClicked: root.board.shoot()
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.open
            primary: !root.board.cameraThere
            text: qsTr("Choose a picture")
            hint: root.board.viewName
            onClicked: file.open()
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.aiming && root.board.saved.length > 0
            text: qsTr("Done")
            hint: qsTr("Back to what you wrote")
            onClicked: root.program.back()
            Layout.fillWidth: true
        }
    ]

    ReplacedLine {
        program: root.program
        Layout.fillWidth: true
    }
    FileDialog {
        id: file

        title: qsTr("A photograph of you")
        nameFilters: [qsTr("Pictures (*.png *.jpg *.jpeg)")]
        onAccepted: root.board.useFile(file.selectedFile)
    }
    Told {
        text: root.board.saved
        strong: false
        color: Theme.tide
        Layout.fillWidth: true
    }
    Told {
        text: root.aiming && root.board.full.length > 0 ? root.board.full : root.board.problem
        alarm: true
        Layout.fillWidth: true
    }
    Choice {
        visible: root.open
        label: qsTr("Which side")
        options: root.board.views
        current: root.board.view
        onChosen: (index) => root.board.choose(index)
        Layout.fillWidth: true
    }
    Words {
        visible: root.open
        text: root.board.task
        strong: true
        Layout.fillWidth: true
    }
    Loader {
        // Only while it is looked through: a camera that is not needed is not touched.
        active: root.open && root.board.cameraThere
        visible: active
        sourceComponent: PhotoCameraBox {
            board: root.board
            mostHeight: root.mostHeight
        }
        Layout.fillWidth: true
    }
    Card {
        visible: root.open && !root.board.cameraThere
        implicitHeight: Math.min(width, Math.max(160, root.height * 0.36))
        Layout.fillWidth: true
        Layout.fillHeight: false
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Drawing of a face: %1").arg(root.board.viewName)

        PhotoGuide {
            anchors.fill: parent
            anchors.margins: Theme.gapSmall
            chart: root.board.chart
        }
    }
    Words {
        visible: root.open && !root.board.cameraThere
        text: qsTr("This device has no camera. Choose a picture that you took just now.")
        Layout.fillWidth: true
    }
    Words {
        visible: root.open
        text: qsTr("Each time: the same light, the same distance, hair off your face. Take both sides.")
        Layout.fillWidth: true
    }
    Words {
        visible: root.open
        text: qsTr("Photographs are up to you. Do not wait for one if you are worried: call.")
        soft: true
        Layout.fillWidth: true
    }
    Heading {
        visible: root.working
        text: qsTr("Getting the picture ready …")
        Layout.fillWidth: true
    }
    Heading {
        visible: root.looking
        text: root.board.viewName
        Layout.fillWidth: true
    }
    PhotoFrame {
        visible: root.looking
        picture: root.board.preview
        whole: true
        implicitHeight: Math.min(width * shape, root.mostHeight)
        Layout.fillWidth: true
        Layout.fillHeight: false
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("The photograph: %1").arg(root.board.viewName)
    }
    Words {
        visible: root.looking
        text: root.board.standsUnder
        strong: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.looking
        text: qsTr("Is it the right side? Is it sharp? Is it from now? If not, take another.")
        Layout.fillWidth: true
    }
    Words {
        visible: root.looking
        text: qsTr("Place and time of the file and the name of your device do not go along. Your face does.")
        soft: true
        Layout.fillWidth: true
    }
}
