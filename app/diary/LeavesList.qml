// What leaves the phone, in plain words: asked for before joining, and at hand later.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

ColumnLayout {
    id: root

    spacing: Theme.gapSmall

    Words {
        text: qsTr("Only what you write, the photographs that you keep here, your answers to reminders, and that you saw a warning. It is sealed for your clinic. The server between can not read it. It sees sizes, times and your net address.")
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("What you are still typing stays here. So do your passphrase and your settings.")
        Layout.fillWidth: true
    }
}
