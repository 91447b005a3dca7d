// One finding: how urgent, what, why, on what ground, what was done, and what can be.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Card {
    id: root

    required property findingRow row
    property string closingBarred
    signal entryWanted
    signal seen
    signal taken
    signal called
    signal forward
    signal closing
    signal reopened

    implicitHeight: inside.implicitHeight + 2 * Theme.gapSmall + Theme.gapHair
    color: root.row.open ? Theme.card : "transparent"
    Accessible.role: Accessible.Grouping
    Accessible.name: root.row.spoken

    ColumnLayout {
        id: inside

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.leftMargin: Theme.gap
        anchors.rightMargin: Theme.gap
        spacing: Theme.gapHair

        // Beside each other where there is room for both. The moment is not wrapped there: what was once wrapped keeps its height.
        GridLayout {
            id: head

            columns: root.width - 2 * Theme.gap >= (root.row.open ? mark.implicitWidth : closed.implicitWidth) + when.implicitWidth + Theme.gapSmall ? 2 : 1
            columnSpacing: Theme.gapSmall
            rowSpacing: 0
            Layout.fillWidth: true

            UrgencyMark {
                id: mark

                visible: root.row.open
                urgency: root.row.urgency
                text: root.row.urgencyName
            }
            Words {
                id: closed

                visible: !root.row.open
                text: qsTr("Closed")
                soft: true
            }
            Words {
                id: when

                text: root.row.when
                small: true
                soft: true
                wrapMode: head.columns === 2 ? Text.NoWrap : Text.Wrap
                horizontalAlignment: head.columns === 2 ? Text.AlignRight : Text.AlignLeft
                Layout.fillWidth: true
            }
        }
        Words {
            text: root.row.title
            strong: true
            Layout.fillWidth: true
        }
        EntryLink {
            text: root.row.reason
            leads: root.row.entryKey.length > 0
            onFollowed: root.entryWanted()
            Layout.fillWidth: true
        }
        Words {
            text: root.row.basis
            small: true
            soft: true
            Layout.fillWidth: true
        }
        Repeater {
            model: root.row.acts

            Words {
                required property string modelData

                text: "· " + modelData
                small: true
                Layout.fillWidth: true
            }
        }
        Flow {
            spacing: Theme.gapHair
            Layout.fillWidth: true
            Layout.topMargin: Theme.gapHair

            ActButton { visible: root.row.open; text: qsTr("Seen"); quiet: true; hint: root.row.title; onClicked: root.seen() }
            ActButton { visible: root.row.open; text: qsTr("Take"); quiet: true; hint: root.row.title; onClicked: root.taken() }
            ActButton { visible: root.row.open; text: qsTr("Call"); quiet: true; hint: root.row.title; onClicked: root.called() }
            ActButton { visible: root.row.open; text: qsTr("Visit forward"); quiet: true; hint: root.row.title; onClicked: root.forward() }
            ActButton { visible: root.row.open; text: qsTr("Close"); hint: root.row.title; barred: root.closingBarred; onClicked: root.closing() }
            ActButton { visible: !root.row.open; text: qsTr("Reopen"); quiet: true; hint: root.row.title; onClicked: root.reopened() }
        }
    }
}
