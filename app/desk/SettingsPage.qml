// How the desk looks and behaves here. Everything takes effect at once.
import QtQuick
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property SettingsBoard settings: root.program.settings

    title: qsTr("Settings")
    subtitle: qsTr("For this computer. Nothing of a patient is stored here.")

    Column {
        id: column

        readonly property real room: Math.min(root.bodyWidth, 46 * Theme.textBody)

        spacing: Theme.gapLarge

        Choice {
            label: qsTr("Language")
            options: root.settings.languageNames
            current: root.settings.languages.indexOf(root.settings.language)
            onChosen: index => root.settings.language = root.settings.languages[index]
            width: column.room
            height: implicitHeight
        }
        Choice {
            label: qsTr("Look")
            options: [qsTr("Light"), qsTr("Dark"), qsTr("High contrast")]
            current: root.settings.look
            onChosen: index => root.settings.look = index
            width: column.room
            height: implicitHeight
        }
        Choice {
            label: qsTr("Size of the text")
            options: root.settings.textSizes
            current: root.settings.textSize
            onChosen: index => root.settings.textSize = index
            width: column.room
            height: implicitHeight
        }
        Choice {
            label: qsTr("Lock when nobody touches the desk for")
            options: root.settings.lockNames
            current: root.settings.lockChoice
            onChosen: index => root.settings.lockChoice = index
            width: column.room
            height: implicitHeight
        }
        TickBox {
            text: qsTr("Less motion")
            checked: root.settings.reducedMotion
            onToggled: root.settings.reducedMotion = checked
            width: column.room
            height: implicitHeight
        }
        TickBox {
            text: qsTr("Single keys in the queue: E opens the entry behind the reason, T takes, C calls, X closes, F brings the visit forward, N next unopened, H hands over, / searches, A takes search and filters off")
            checked: root.settings.singleKeys
            onToggled: root.settings.singleKeys = checked
            width: column.room
            height: implicitHeight
        }
        Words {
            objectName: "onNotices"
            text: root.program.alarm.onNotices
            soft: true
            width: column.room
        }
        ActButton {
            text: qsTr("About Ebbline")
            hint: qsTr("Version, makers and licences")
            onClicked: root.program.openNotices()
        }
    }
}
