// Who has which role at the clinic: a rule of the house, and no lock.
//
// In   roles
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property RoleBoard roles

    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: qsTr("People and roles")
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("A role is a rule of the house and no lock: people are names here, behind one passphrase. Whoever may not do something is told who may. Taking and calling a patient, noting it and reopening a finding are open to everyone.")
        soft: true
        Layout.fillWidth: true
        Layout.maximumWidth: 60 * Theme.textBody
    }
    Words {
        visible: root.roles.people.length > 0
        text: root.roles.people
        soft: true
        Layout.fillWidth: true
    }
    Repeater {
        model: root.roles.persons

        // No layout: one within another keeps the height of an older width.
        Column {
            id: person

            required property personRow row

            spacing: Theme.gapHair
            Layout.fillWidth: true

            Choice {
                label: person.row.name
                options: root.roles.names
                current: person.row.role
                enabled: root.roles.people.length === 0
                opacity: enabled ? 1 : 0.55
                onChosen: index => root.roles.give(person.row.name, index)
                width: person.width
            }
            Words {
                text: person.row.may
                soft: true
                small: true
                width: person.width
            }
        }
    }
    AskCard {
        objectName: "roleQuestion"
        question: root.roles.question
        act: qsTr("Give that role")
        stay: qsTr("Keep my role")
        onActed: root.roles.giveAsked()
        onStayed: root.roles.leaveQuestion()
        Layout.fillWidth: true
    }
    Told {
        objectName: "roleOutcome"
        text: root.roles.outcome
        Layout.fillWidth: true
    }
}
