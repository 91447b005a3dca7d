// A call: the number in large, what to ask, what to write down of it, and why. The questions come before the
// reasons: whoever calls has read the row, and needs them on a small screen too.
//
// In   call
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PanelFrame {
    id: root

    required property CallBoard call

    shown: root.call.shown
    title: root.call.title
    letters: 48
    onLeft: root.call.leave()
    acts: [
        ActButton {
            objectName: "reached"
            text: root.call.reasons.length > 0 ? qsTr("Spoke with her") : qsTr("We reached her")
            primary: true
            onClicked: root.call.reached()
        },
        ActButton {
            objectName: "sheRang"
            text: qsTr("She called us")
            visible: root.call.reasons.length === 0
            onClicked: root.call.sheRang()
        },
        ActButton {
            text: qsTr("Not reached")
            onClicked: root.call.notReached()
        },
        ActButton {
            objectName: "broughtForward"
            text: root.call.asksVisit ? qsTr("Move the visit") : qsTr("Visit brought forward")
            visible: !root.call.asksVisit || root.call.visitMovable
            enabled: !root.call.asksVisit || root.call.visitShows.length > 0
            onClicked: root.call.broughtForward()
        },
        ActButton {
            text: qsTr("Send as a message")
            enabled: root.call.linked && root.call.note.trim().length > 0
            onClicked: root.call.sendAsMessage()
        },
        ActButton {
            text: qsTr("Not now")
            quiet: true
            onClicked: root.call.leave()
        }
    ]

    Words {
        text: root.call.phone
        strong: true
        font.pixelSize: Theme.textDisplay
        Layout.fillWidth: true
    }
    Told {
        text: root.call.others
        alarm: true
        Layout.fillWidth: true
    }
    Told {
        objectName: "arrived"
        text: root.call.arrived
        alarm: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.call.language.length > 0
        text: root.call.language
        soft: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.call.reasons.length === 0 && root.call.arrived.length === 0
        text: qsTr("Nothing is open: the call is noted on the course.")
        soft: true
        Layout.fillWidth: true
    }
    Words {
        objectName: "visitUntold"
        visible: text.length > 0
        text: root.call.visitUntold
        soft: true
        Layout.fillWidth: true
    }
    CallVisit {
        visible: root.call.asksVisit
        call: root.call
        Layout.fillWidth: true
    }
    Heading {
        level: 2
        text: qsTr("What to ask")
        topPadding: Theme.gapSmall
        Layout.fillWidth: true
    }
    Repeater {
        model: root.call.script

        Words {
            required property string modelData
            required property int index

            text: qsTr("%L1. %2").arg(index + 1).arg(modelData)
            Layout.fillWidth: true
        }
    }
    NoteField {
        label: qsTr("Note, or message to the patient")
        value: root.call.note
        lines: 2
        onEdited: text => root.call.note = text
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapSmall
    }
    Heading {
        visible: root.call.reasons.length > 0
        level: 2
        text: qsTr("Why")
        topPadding: Theme.gapSmall
        Layout.fillWidth: true
    }
    Repeater {
        model: root.call.reasons

        Words {
            required property string modelData

            text: modelData
            soft: true
            Layout.fillWidth: true
        }
    }
}
