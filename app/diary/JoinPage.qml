// Joining the clinic: its code, where she is if the code came as a picture, the six digits, and the first care plan.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program
    readonly property JoinBoard board: root.program.joining
    readonly property bool asking: root.board.stage === JoinBoard.Code
    readonly property bool placing: root.board.stage === JoinBoard.Place

    topOn: String(root.board.stage)
    foot: [
        ActButton {
            visible: root.asking
            primary: true
            text: qsTr("Use this code")
            onClicked: root.board.useText(code.field.text, hub.field.text)
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.placing
            text: qsTr("Yes, I am there")
            onClicked: root.board.answerPlace(true)
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.placing
            text: qsTr("No")
            onClicked: root.board.answerPlace(false)
            Layout.fillWidth: true
        },
        ActButton {
            visible: root.board.stage === JoinBoard.Waiting || root.board.stage === JoinBoard.Compare
            text: qsTr("Start over")
            onClicked: root.board.startOver()
            Layout.fillWidth: true
        }
    ]

    Shortcut {
        sequences: ["Escape"]
        enabled: root.placing
        onActivated: root.program.back()
    }
    FileDialog {
        id: picture

        title: qsTr("A picture of the code")
        nameFilters: [qsTr("Pictures (*.png *.jpg *.jpeg)")]
        onAccepted: root.board.usePicture(picture.selectedFile)
    }
    Told {
        text: root.board.problem
        alarm: true
        Layout.fillWidth: true
    }
    Told {
        text: root.board.outcome
        strong: false
        Layout.fillWidth: true
    }
    Words {
        visible: root.asking
        text: qsTr("Do this at your clinic. Your clinic shows a code on its screen.")
        Layout.fillWidth: true
    }
    Loader {
        // Only while it is looked through: a camera that is not needed is not touched.
        active: root.asking && root.board.cameraShown
        visible: active
        sourceComponent: CameraBox {
            board: root.board
        }
        Layout.fillWidth: true
    }
    Words {
        visible: root.asking && !root.board.cameraShown
        text: root.board.cameraSays
        soft: true
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.asking
        text: qsTr("Choose a picture")
        onClicked: picture.open()
        Layout.fillWidth: true
    }
    LineField {
        id: code

        visible: root.asking
        label: qsTr("Or type the code, 24 letters and digits")
        Layout.fillWidth: true
    }
    LineField {
        id: hub

        visible: root.asking
        label: qsTr("The address under the code")
        onAccepted: root.board.useText(code.field.text, hub.field.text)
        Layout.fillWidth: true
    }
    Heading {
        visible: root.placing
        text: qsTr("Are you at your clinic now?")
        Layout.fillWidth: true
    }
    Told {
        visible: root.placing
        text: qsTr("Anyone can send you a picture of a code. What you write would then go to them. At your clinic you can see where the code comes from.")
        strong: false
        Layout.fillWidth: true
    }
    Heading {
        visible: root.board.stage === JoinBoard.Waiting
        text: qsTr("Asking your clinic …")
        Layout.fillWidth: true
    }
    Words {
        visible: root.board.stage === JoinBoard.Waiting
        text: qsTr("Keep this page open. Next comes a number to compare.")
        Layout.fillWidth: true
    }
    Heading {
        visible: root.board.stage === JoinBoard.Compare
        text: qsTr("Read this number to your clinic")
        Layout.fillWidth: true
    }
    Text {
        visible: root.board.stage === JoinBoard.Compare
        text: root.board.number
        color: Theme.tide
        font.family: Theme.family
        font.pixelSize: Theme.textDisplay
        font.weight: Font.DemiBold
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
        Accessible.role: Accessible.StaticText
        Accessible.name: root.board.number
    }
    Words {
        visible: root.board.stage === JoinBoard.Compare
        text: qsTr("They must see the same six digits. If not, tell them and start over.")
        Layout.fillWidth: true
    }
    Heading {
        visible: root.board.stage === JoinBoard.Arriving
        text: qsTr("You have joined. Your care plan is on its way …")
        Layout.fillWidth: true
    }
    Words {
        visible: root.board.stage === JoinBoard.Arriving
        text: qsTr("If you close the diary now, it goes on when you open it again.")
        Layout.fillWidth: true
    }
    ActButton {
        quiet: true
        text: qsTr("Settings")
        hint: qsTr("Language and text size")
        onClicked: root.program.openSettings()
        Layout.fillWidth: true
    }
}
