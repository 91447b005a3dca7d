// Changing a protocol: what the patient is asked, what raises a finding, and a rehearsal before it goes live.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property ProtocolEditor editor: root.program.protocolEditor

    title: qsTr("Change the protocol")
    subtitle: root.editor.title
    actions: [
        ActButton {
            text: qsTr("Undo")
            enabled: root.editor.canUndo
            onClicked: root.editor.undo()
        },
        ActButton {
            text: qsTr("Redo")
            enabled: root.editor.canRedo
            onClicked: root.editor.redo()
        },
        ActButton {
            text: qsTr("As in use")
            hint: qsTr("Drops every change; can be undone.")
            quiet: true
            onClicked: root.editor.startOver()
        }
    ]

    Shortcut {
        sequences: [StandardKey.Undo]
        onActivated: root.editor.undo()
    }
    Shortcut {
        sequences: [StandardKey.Redo]
        onActivated: root.editor.redo()
    }
    Choice {
        options: root.editor.steps
        current: root.editor.step
        onChosen: index => root.editor.step = index
        Layout.fillWidth: true
    }
    Told {
        text: root.editor.outcome
        Layout.fillWidth: true
    }
    Words {
        visible: root.program.roles.protocols.length > 0 && root.editor.canTakeBack && root.editor.step !== 2
        text: root.program.roles.protocols
        strong: true
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.editor.canTakeBack
        text: qsTr("Undo the signature")
        barred: root.program.roles.protocols
        hint: qsTr("Signs what was in use before anew.")
        onClicked: root.editor.takeBack()
    }
    ProtocolPlan {
        visible: root.editor.step === 0
        editor: root.editor
        room: root.bodyWidth
        Layout.fillWidth: true
    }
    ProtocolRules {
        visible: root.editor.step === 1
        editor: root.editor
        room: root.bodyWidth
        Layout.fillWidth: true
    }
    ProtocolSigning {
        visible: root.editor.step === 2
        editor: root.editor
        barred: root.program.roles.protocols
        Layout.fillWidth: true
    }
}
