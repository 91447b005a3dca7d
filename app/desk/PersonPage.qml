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
            model: root.program.clinic.personChoices

            ActButton {
                required property string modelData

                text: modelData
                primary: modelData === root.program.clinic.person
                onClicked: root.program.choosePerson(modelData)
                Layout.fillWidth: true
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
