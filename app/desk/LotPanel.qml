// Where a lot went, and whom to call.
//
// In   lots
// Out  opened(course)
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property LotBoard lots
    signal opened(string course)

    spacing: Theme.gap

    Words {
        text: qsTr("Choose a lot to see everybody who received it. It is found however it was written. A lot is no cause: who received it may be fine.")
        soft: true
        Layout.fillWidth: true
    }
    LineField {
        label: qsTr("Lot")
        value: root.lots.search
        onEdited: text => root.lots.search = text
        Layout.maximumWidth: 24 * Theme.textBody
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        Repeater {
            model: root.lots.lots

            ActButton {
                required property lotRow row

                text: qsTr("%1 · %2").arg(row.lot).arg(row.courses)
                hint: row.outcomes
                width: Math.min(implicitWidth, root.width)
                primary: row.key === root.lots.chosen
                onClicked: root.lots.choose(row.key)
            }
        }
    }
    Words {
        visible: root.lots.lots.count === 0
        text: qsTr("No treatment on record has such a lot.")
        Layout.fillWidth: true
    }
    Card {
        visible: root.lots.chosen.length > 0
        implicitHeight: content.implicitHeight + 2 * Theme.gapLarge
        Layout.fillWidth: true

        ColumnLayout {
            id: content

            x: Theme.gapLarge
            y: Theme.gapLarge
            width: parent.width - 2 * Theme.gapLarge
            spacing: Theme.gap

            Heading {
                level: 2
                text: root.lots.says
                Layout.fillWidth: true
            }
            ColumnLayout {
                spacing: 0
                Layout.fillWidth: true

                TableLine {
                    strong: true
                    cells: [qsTr("Patient"), qsTr("Phone"), qsTr("Treated"), qsTr("Lot as written"), qsTr("Outcome")]
                    widths: [6, 6, 6, 5, 7]
                    Layout.fillWidth: true
                }
                Repeater {
                    model: root.lots.calls

                    TableLine {
                        required property callRow row

                        cells: [row.name, row.phone, row.treated, row.printed, row.outcome]
                        widths: [6, 6, 6, 5, 7]
                        spoken: row.spoken
                        opens: true
                        onOpened: root.opened(row.course)
                        Layout.fillWidth: true
                    }
                }
            }
            Told {
                text: root.lots.outcome
                Layout.fillWidth: true
            }
            ActButton {
                text: qsTr("Save the call list")
                primary: true
                onClicked: root.lots.saveAs()
            }
        }
    }
}
