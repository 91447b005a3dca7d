// How the diary looks and speaks, and the ways to reminders, lock and one's own data.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

PageBody {
    id: root

    required property DiaryProgram program
    readonly property DiarySettings settings: root.program.settings

    Choice {
        label: qsTr("Language")
        options: root.settings.languageNames
        current: root.settings.language
        onChosen: (index) => root.settings.language = index
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Reminders")
        hint: root.program.reminders.state
        onClicked: root.program.openReminders()
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("The lock")
        hint: qsTr("Passphrase and recovery code")
        onClicked: root.program.openKeys()
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("My data")
        hint: qsTr("What leaves this phone. Take it along. Delete it.")
        onClicked: root.program.openMine()
        Layout.fillWidth: true
    }
    Choice {
        label: qsTr("Text size")
        options: [qsTr("Usual"), qsTr("Large"), qsTr("Very large")]
        current: root.settings.textSize
        onChosen: (index) => root.settings.textSize = index
        Layout.fillWidth: true
    }
    Choice {
        label: qsTr("Look")
        options: [qsTr("Light"), qsTr("Dark"), qsTr("High contrast")]
        current: root.settings.look
        onChosen: (index) => root.settings.look = index
        Layout.fillWidth: true
    }
    Choice {
        label: qsTr("Temperature in")
        options: [qsTr("°C"), qsTr("°F")]
        current: root.settings.fahrenheit ? 1 : 0
        onChosen: (index) => root.settings.fahrenheit = index === 1
        Layout.fillWidth: true
    }
    TickBox {
        text: qsTr("Less motion")
        checked: root.settings.reducedMotion
        onToggled: root.settings.reducedMotion = checked
        Layout.fillWidth: true
    }
    Choice {
        label: qsTr("Locks if not touched for (minutes)")
        options: root.settings.lockNames
        current: root.settings.lockChoice
        onChosen: (index) => root.settings.lockChoice = index
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Send and fetch now")
        onClicked: root.program.askNow()
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("Lock the diary")
        onClicked: root.program.lock()
        Layout.fillWidth: true
    }
    ActButton {
        text: qsTr("About Ebbline")
        hint: qsTr("Version, makers and licences")
        onClicked: root.program.openNotices()
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("Ebbline is free software under the GPL 3. It is not a certified medical device. It does not replace your clinic or an emergency service.")
        small: true
        soft: true
        Layout.fillWidth: true
    }
}
