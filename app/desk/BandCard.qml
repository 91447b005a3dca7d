// One version of the usual range, with its check.
//
// In   row, bands, barred (why using it is not for who is here)
// Out  choosing
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Card {
    id: root

    required property bandRow row
    required property BandBoard bands
    property string barred
    property bool tableShown: false
    readonly property list<real> shares: [5, 3, 8, 6, 6]
    signal choosing

    implicitHeight: content.implicitHeight + 2 * Theme.gap
    border.color: root.row.inUse ? Theme.tide : Theme.hair
    border.width: root.row.inUse ? Theme.focusWidth : Theme.hairline

    ColumnLayout {
        id: content

        x: Theme.gap
        y: Theme.gap
        width: parent.width - 2 * Theme.gap
        spacing: Theme.gapSmall

        Words {
            text: root.row.inUse ? qsTr("%1, in use").arg(root.row.title) : root.row.title
            strong: true
            Layout.fillWidth: true
        }
        Words {
            text: root.row.rests
            soft: true
            Layout.fillWidth: true
        }
        Words {
            visible: root.row.check.length > 0
            text: root.row.check
            Layout.fillWidth: true
        }
        ColumnLayout {
            visible: root.tableShown
            spacing: 0
            Layout.fillWidth: true

            TableLine {
                strong: true
                cells: root.bands.coverageHeader
                widths: root.shares
                Layout.fillWidth: true
            }
            Repeater {
                model: root.tableShown ? root.row.coverage : []

                TableLine {
                    required property var modelData

                    cells: modelData
                    widths: root.shares
                    Layout.fillWidth: true
                }
            }
        }
        Flow {
            visible: root.row.usable || root.row.coverage.length > 0
            spacing: Theme.gapSmall
            Layout.fillWidth: true

            ActButton {
                visible: root.row.usable
                text: root.row.wasInUse ? qsTr("Go back to it") : qsTr("Use it")
                hint: root.row.title
                barred: root.barred
                onClicked: root.choosing()
            }
            ActButton {
                visible: root.row.coverage.length > 0
                text: root.tableShown ? qsTr("Hide the check") : qsTr("Show the check")
                hint: root.row.title
                quiet: true
                onClicked: root.tableShown = !root.tableShown
            }
        }
    }
}
