// A protocol that came in a file: what it is, what differs from the one in use, and a draft made of it.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property ProtocolTaking taking: root.program.protocolTaking
    readonly property list<real> shares: [8, 9, 9]

    title: qsTr("A protocol from a file")
    subtitle: root.taking.title
    actions: [
        ActButton {
            text: qsTr("Leave it")
            hint: qsTr("Nothing of the file is kept.")
            quiet: true
            onClicked: root.program.openProtocols()
        }
    ]

    Told {
        text: root.taking.problem
        Layout.fillWidth: true
    }
    Heading {
        level: 2
        text: qsTr("What it is")
        Layout.fillWidth: true
    }
    Repeater {
        model: root.taking.facts

        Words {
            required property string modelData

            text: modelData
            Layout.fillWidth: true
        }
    }
    Heading {
        level: 2
        text: qsTr("What raises a finding")
        Layout.topMargin: Theme.gap
        Layout.fillWidth: true
    }
    ColumnLayout {
        visible: root.taking.rules.length > 0
        spacing: 0
        Layout.fillWidth: true

        TableLine {
            strong: true
            cells: root.taking.rulesHeader
            widths: root.shares
            Layout.fillWidth: true
        }
        Repeater {
            model: root.taking.rules

            TableLine {
                required property var modelData

                cells: modelData
                widths: root.shares
                Layout.fillWidth: true
            }
        }
    }
    Words {
        text: root.taking.rulesText
        soft: true
        Layout.fillWidth: true
    }
    Heading {
        level: 2
        text: qsTr("What the patient is asked to do")
        Layout.topMargin: Theme.gap
        Layout.fillWidth: true
    }
    Words {
        visible: root.taking.plan.length === 0
        text: qsTr("The care plan is the same.")
        soft: true
        Layout.fillWidth: true
    }
    Repeater {
        model: root.taking.plan

        Words {
            required property string modelData

            text: modelData
            Layout.fillWidth: true
        }
    }
    TickBox {
        visible: root.taking.plan.length > 0
        text: qsTr("Take its care plan as well")
        checked: root.taking.withPlan
        onToggled: root.taking.withPlan = checked
        Layout.fillWidth: true
    }
    Heading {
        level: 2
        text: qsTr("What counts as usual")
        Layout.topMargin: Theme.gap
        Layout.fillWidth: true
    }
    Words {
        text: root.taking.range
        Layout.fillWidth: true
    }
    TickBox {
        visible: root.taking.asksOthers
        text: qsTr("No course of this clinic is behind it: check it on all of ours")
        checked: root.taking.ofOthers
        onToggled: root.taking.ofOthers = checked
        Layout.fillWidth: true
    }
    Words {
        visible: root.taking.asksOthers
        text: qsTr("Otherwise only courses that were treated after it was learned count as not seen. A range from your own courses is learned under Practice, Usual range.")
        soft: true
        small: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.taking.draftText.length > 0
        text: root.taking.draftText
        Layout.fillWidth: true
    }
    Words {
        visible: root.program.roles.protocols.length > 0
        text: root.program.roles.protocols
        strong: true
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Make a draft of it")
        hint: qsTr("It is rehearsed and signed like every other draft; nothing goes live before.")
        primary: true
        barred: root.program.roles.protocols
        onClicked: root.taking.makeDraft()
        Layout.topMargin: Theme.gap
    }
}
