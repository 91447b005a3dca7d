// The clinic: whom patients call, who works here, its hub, and its own limit of lidocaine.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property ClinicEditor editor: root.program.clinic
    readonly property RoleBoard roles: root.program.roles
    readonly property string barred: root.editor.numbersChanged && root.roles.numbers ? root.roles.numbers
                                     : root.editor.namesChanged && root.roles.people ? root.roles.people
                                     : root.editor.hubRenamed ? root.roles.desks : ""

    title: qsTr("Clinic")
    subtitle: root.editor.saved.length > 0 ? root.editor.saved
                                           : qsTr("The numbers stand on every warning, even on a locked phone without network.")

    Words {
        text: root.program.hub.phones
        soft: true
        Layout.fillWidth: true
    }
    GridLayout {
        columns: root.bodyWidth > 56 * Theme.textBody ? 2 : 1
        columnSpacing: Theme.gapPage
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        ColumnLayout {
            spacing: Theme.gap
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            Layout.fillHeight: false

            LineField {
                objectName: "clinicName"
                label: qsTr("Name of the clinic")
                value: root.editor.clinicName
                onEdited: text => root.editor.clinicName = text
                Layout.fillWidth: true
            }
            LineField {
                label: qsTr("Phone during the day")
                value: root.editor.clinicPhone
                onEdited: text => root.editor.clinicPhone = text
                Layout.fillWidth: true
            }
            LineField {
                label: qsTr("On call, if the clinic does not answer")
                value: root.editor.onCallPhone
                onEdited: text => root.editor.onCallPhone = text
                Layout.fillWidth: true
            }
            LineField {
                label: qsTr("Emergency number of your country")
                numeric: true
                value: root.editor.emergencyNumber
                onEdited: text => root.editor.emergencyNumber = text
                Layout.fillWidth: true
            }
        }
        ColumnLayout {
            spacing: Theme.gap
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            Layout.fillHeight: false

            NoteField {
                label: qsTr("People at the desk, one name a line")
                value: root.editor.people
                lines: 4
                onEdited: text => root.editor.people = text
                Layout.fillWidth: true
            }
            LineField {
                label: qsTr("Hub, address and port")
                hint: "hub.example:8443"
                value: root.editor.hub
                onEdited: text => root.editor.hub = text
                Layout.fillWidth: true
            }
            LineField {
                visible: root.editor.hubKeyAsked
                label: qsTr("Fingerprint of the hub's key, from whoever runs it")
                value: root.editor.hubKey
                onEdited: text => root.editor.hubKey = text
                Layout.fillWidth: true
            }
            LineField {
                objectName: "clinicKey"
                label: qsTr("This clinic's key: whoever runs the hub admits it by this")
                value: root.editor.clinicKey
                fixed: true
                Layout.fillWidth: true
            }
            ActButton {
                text: qsTr("Copy the key")
                onClicked: root.editor.copyClinicKey()
            }
        }
    }
    Repeater {
        model: root.editor.missing

        Words {
            required property string modelData

            text: qsTr("Missing: %1").arg(modelData)
            soft: true
            Layout.fillWidth: true
        }
    }
    Told {
        text: root.barred
        alarm: true
        Layout.fillWidth: true
    }
    StepFields {
        id: step

        visible: root.editor.numbersChanged
        problem: root.editor.stepProblem
        fresh: !root.editor.numbersChanged
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody
    }
    Flow {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        ActButton {
            objectName: "saveClinic"
            text: qsTr("Save")
            primary: true
            barred: root.barred
            enabled: root.editor.missing.length === 0 && barred.length === 0
            onClicked: root.editor.save(step.passphrase)
        }
        ActButton {
            objectName: "joinOthers"
            visible: !root.program.demo && !root.editor.described
            text: qsTr("Join the clinic's other desks")
            hint: qsTr("If the clinic works with Ebbline at another computer already")
            onClicked: root.program.openApply()
        }
        ActButton {
            objectName: "desks"
            visible: root.editor.described
            text: qsTr("Desks")
            hint: qsTr("Add another computer, shut out a lost one")
            onClicked: root.program.openDesks()
        }
        ActButton {
            objectName: "openTraces"
            text: qsTr("Who did what")
            hint: qsTr("What was written at the clinic's desks, to search and to save")
            onClicked: root.program.openTraces()
        }
        ActButton {
            objectName: "keep"
            visible: !root.program.demo
            text: qsTr("Backup and keys")
            onClicked: root.program.openKeep()
        }
    }
    RoleFields {
        visible: root.editor.described
        roles: root.roles
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapLarge
    }
    LimitFields {
        visible: root.editor.described
        barred: root.roles.protocols
        limits: root.program.doseLimits
        room: root.bodyWidth
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapLarge
    }
}
