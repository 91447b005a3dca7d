// How the desk looks and behaves here. Everything takes effect at once.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property SettingsBoard settings: root.program.settings

    title: qsTr("Settings")
    subtitle: qsTr("For this computer. Nothing of a patient is stored here.")

    ColumnLayout {
        spacing: Theme.gapLarge
        Layout.fillWidth: true
        Layout.maximumWidth: 46 * Theme.textBody

        Choice {
            label: qsTr("Language")
            options: root.settings.languageNames
            current: root.settings.languages.indexOf(root.settings.language)
            onChosen: index => root.settings.language = root.settings.languages[index]
            Layout.fillWidth: true
        }
        Choice {
            label: qsTr("Look")
            options: [qsTr("Light"), qsTr("Dark"), qsTr("High contrast")]
            current: root.settings.look
            onChosen: index => root.settings.look = index
            Layout.fillWidth: true
        }
        Choice {
            label: qsTr("Size of the text")
            options: ["100 %", "125 %", "150 %", "175 %", "200 %"]
            current: [100, 125, 150, 175, 200].indexOf(root.settings.textPercent)
            onChosen: index => root.settings.textPercent = [100, 125, 150, 175, 200][index]
            Layout.fillWidth: true
        }
        StepField {
            label: qsTr("Lock when nobody touches the desk for")
            unit: qsTr("minutes")
            from: 1
            to: 60
            value: root.settings.lockMinutes
            onMoved: value => root.settings.lockMinutes = value
            Layout.fillWidth: true
            Layout.maximumWidth: 24 * Theme.textBody
        }
        TickBox {
            text: qsTr("Less motion")
            checked: root.settings.reducedMotion
            onToggled: root.settings.reducedMotion = checked
            Layout.fillWidth: true
        }
        TickBox {
            text: qsTr("Single keys in the queue: T takes, C notes a call, X closes, / searches")
            checked: root.settings.singleKeys
            onToggled: root.settings.singleKeys = checked
            Layout.fillWidth: true
        }
    }
}
