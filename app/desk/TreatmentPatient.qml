// Whose treatment it is: choose, or register.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

GridLayout {
    id: root

    property TreatmentEditor editor
    property real room: 0
    readonly property bool ready: root.editor !== null

    columns: root.room > 48 * Theme.textBody ? 2 : 1
    columnSpacing: Theme.gapPage
    rowSpacing: Theme.gapLarge

    ColumnLayout {
        spacing: Theme.gapSmall
        Layout.fillWidth: true
        Layout.preferredWidth: 1
        Layout.alignment: Qt.AlignTop

        Heading {
            level: 2
            visible: root.ready && root.editor.begun.count > 0
            text: qsTr("Begun and not recorded")
            Layout.fillWidth: true
        }
        Repeater {
            model: root.ready ? root.editor.begun : null

            PatientLine {
                required property patientRow row

                text: row.name
                chosen: row.key === root.editor?.patientKey
                onClicked: root.editor.takeUpBegun(row.key)
                Layout.fillWidth: true
            }
        }
        Heading {
            level: 2
            text: qsTr("Known patients")
            Layout.fillWidth: true
        }
        LineField {
            hint: qsTr("Name or phone")
            value: root.ready ? root.editor.patientSearch : ""
            onEdited: text => root.editor.patientSearch = text
            Layout.fillWidth: true
        }
        Repeater {
            model: root.ready ? root.editor.patients : null

            PatientLine {
                required property patientRow row

                text: row.phone.length > 0 ? row.name + " · " + row.phone : row.name
                chosen: row.key === root.editor?.patientKey
                onClicked: root.editor.choosePatient(row.key)
                Layout.fillWidth: true
            }
        }
        Words {
            visible: root.ready && root.editor.patients.count === 0
            text: qsTr("Nobody found. Register the patient beside this.")
            soft: true
            Layout.fillWidth: true
        }
    }
    ColumnLayout {
        spacing: Theme.gapSmall
        Layout.fillWidth: true
        Layout.preferredWidth: 1
        Layout.alignment: Qt.AlignTop

        Heading {
            level: 2
            text: qsTr("New patient")
            Layout.fillWidth: true
        }
        LineField {
            id: name

            objectName: "newName"
            label: qsTr("Name")
            value: root.ready ? root.editor.begunOf("name") : ""
            onEdited: text => root.editor.keepOf("name", text)
            Layout.fillWidth: true
        }
        LineField {
            id: phone

            label: qsTr("Phone number, to call the patient")
            value: root.ready ? root.editor.begunOf("phone") : ""
            onEdited: text => root.editor.keepOf("phone", text)
            Layout.fillWidth: true
        }
        Choice {
            id: language

            label: qsTr("Language of the diary")
            options: root.editor.diaryLanguageNames
            current: root.editor.likelyDiaryLanguage
            onChosen: index => language.current = index
            Layout.fillWidth: true
        }
        ActButton {
            text: qsTr("Register")
            enabled: name.field.text.trim().length > 0
            onClicked: root.editor.registerPatient(name.field.text, phone.field.text, language.current)
        }
    }
}
