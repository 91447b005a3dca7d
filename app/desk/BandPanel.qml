// The usual range: which is in use, whom a new one would be learned from, every version with its check.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property BandBoard bands
    required property Begun begun
    property string barred

    spacing: Theme.gap

    Heading {
        level: 2
        text: qsTr("In use")
        Layout.fillWidth: true
    }
    Words {
        text: root.bands.inUse
        Layout.fillWidth: true
    }
    Heading {
        level: 2
        text: qsTr("Learn a new one")
        Layout.topMargin: Theme.gap
        Layout.fillWidth: true
    }
    Words {
        text: root.bands.teachers
        Layout.fillWidth: true
    }
    Repeater {
        model: root.bands.refusals

        Words {
            required property string modelData

            text: modelData
            soft: true
            Layout.fillWidth: true
        }
    }
    WorkBar {
        visible: root.bands.learning
        text: qsTr("Learning, and checking on courses left out. This takes a while; the desk stays free.")
        part: 0
        Layout.fillWidth: true
    }
    Told {
        text: root.bands.outcome
        Layout.fillWidth: true
    }
    Words {
        visible: root.barred.length > 0
        text: root.barred
        soft: true
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Learn a version")
        primary: true
        barred: root.barred
        enabled: root.bands.mayLearn && barred.length === 0
        hint: qsTr("Nothing comes into use by it.")
        onClicked: root.bands.learn()
    }
    Heading {
        level: 2
        text: qsTr("Versions")
        Layout.topMargin: Theme.gap
        Layout.fillWidth: true
    }
    Repeater {
        model: root.bands.versions

        BandCard {
            bands: root.bands
            barred: root.barred
            onChoosing: root.bands.startChoosing(row.version)
            Layout.fillWidth: true
        }
    }
    Repeater {
        model: root.bands.choices

        Words {
            required property string modelData

            text: modelData
            soft: true
            small: true
            Layout.fillWidth: true
        }
    }
    ReasonPanel {
        shown: root.bands.choosing.length > 0
        begun: root.begun
        place: "band/" + root.bands.choosing
        title: root.bands.choosingText
        text: qsTr("Every protocol is signed anew with it. Courses that run keep theirs. The reason is kept with your name.")
        act: root.bands.choosingText
        onDecided: reason => root.bands.choose(reason)
        onLeft: root.bands.cancelChoosing()
    }
}
