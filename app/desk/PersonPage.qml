// Who is at the desk: every act carries the name.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program

    title: qsTr("Who is at the desk?")
    subtitle: qsTr("What you take, call and close carries your name, and the patient's phone shows who opened an entry.")

    ColumnLayout {
        spacing: Theme.gapSmall
        Layout.fillWidth: true
        Layout.maximumWidth: 30 * Theme.textBody

        Repeater {
            model: root.program.roles.persons

            ColumnLayout {
                id: person

                required property personRow row

                spacing: Theme.gapHair
                Layout.fillWidth: true

                ActButton {
                    text: person.row.name
                    hint: person.row.may
                    primary: person.row.name === root.program.clinic.person
                    onClicked: root.program.choosePerson(person.row.name)
                    Layout.fillWidth: true
                }
                Words {
                    visible: person.row.role >= 0
                    text: person.row.role >= 0 ? root.program.roles.names[person.row.role] : ""
                    small: true
                    soft: true
                    Layout.fillWidth: true
                }
            }
        }
        ActButton {
            text: qsTr("Somebody is missing: edit the clinic")
            quiet: true
            onClicked: root.program.openClinic()
            Layout.fillWidth: true
        }
    }
}
