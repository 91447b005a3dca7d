// Before the code: which protocol goes to the phone, and when the follow-up is.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property PairingBoard board

    spacing: Theme.gap

    Choice {
        label: qsTr("Protocol: care plan, rules and usual range, signed by the clinic")
        options: root.board.protocols
        current: root.board.protocol
        onChosen: index => root.board.protocol = index
        Layout.fillWidth: true
    }
    LineField {
        objectName: "followUpDay"
        label: qsTr("Follow-up, year-month-day")
        value: root.board.followUp
        onEdited: text => root.board.followUp = text
        Layout.fillWidth: true
        Layout.maximumWidth: 20 * Theme.textBody
    }
    LineField {
        objectName: "followUpTime"
        label: qsTr("Its time, hours:minutes, if it is agreed")
        value: root.board.followUpTime
        onEdited: text => root.board.followUpTime = text
        Layout.fillWidth: true
        Layout.maximumWidth: 20 * Theme.textBody
    }
    Words {
        visible: root.board.followUpText.length > 0
        text: root.board.followUpText
        soft: true
        Layout.fillWidth: true
    }
    Told {
        text: root.board.blocked
        alarm: true
        Layout.fillWidth: true
    }
}
