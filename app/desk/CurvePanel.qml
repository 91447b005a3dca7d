// The curves of one symptom, side beside side on the same axes, or the same as a table.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property CurveBoard curves
    property real room: 0
    readonly property bool beside: root.room > 38 * Theme.textBody
    readonly property real boxWidth: Math.max(0, (root.room - 2 * Theme.gap - (root.beside ? Theme.gap : 0)) / (root.beside ? 2 : 1))

    spacing: Theme.gapSmall

    Flow {
        spacing: Theme.gapHair
        Layout.fillWidth: true

        Repeater {
            model: root.curves.symptoms

            SymptomButton {
                current: row.symptom === root.curves.symptom
                onClicked: root.curves.symptom = row.symptom
            }
        }
    }
    Card {
        implicitHeight: inside.implicitHeight + 2 * Theme.gap
        Layout.fillWidth: true

        ColumnLayout {
            id: inside

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.top: parent.top
            anchors.margins: Theme.gap
            spacing: Theme.gapSmall

            Words {
                text: qsTr("As when facing the patient: the patient's right on the left.")
                small: true
                soft: true
                Layout.fillWidth: true
            }
            // Never mirrored: sides and time keep their place in every language.
            Grid {
                visible: !root.curves.tableShown
                columns: root.beside ? 2 : 1
                columnSpacing: Theme.gap
                rowSpacing: Theme.gap
                layoutDirection: Qt.LeftToRight
                verticalItemAlignment: Grid.AlignBottom  // the axes of both stand on one line, however their titles wrap
                LayoutMirroring.enabled: false
                LayoutMirroring.childrenInherit: true
                Layout.fillWidth: true

                CurveBox {
                    width: root.boxWidth
                    picture: root.curves.rightCurve
                    events: root.curves.events
                    eventsSpoken: root.curves.eventsSentence
                }
                CurveBox {
                    width: root.boxWidth
                    picture: root.curves.leftCurve
                    events: root.curves.events
                }
            }
            CurveTable {
                visible: root.curves.tableShown
                rows: root.curves.table
                Layout.fillWidth: true
            }
            Words {
                visible: root.curves.figures.length > 0
                text: root.curves.figures
                Layout.fillWidth: true
            }
            Words {
                objectName: "beyond"
                visible: root.curves.beyond.length > 0
                text: root.curves.beyond
                strong: true
                Layout.fillWidth: true
            }
            Words {
                objectName: "legend"
                text: root.curves.legend
                small: true
                soft: true
                Layout.fillWidth: true
            }
            Words {
                text: qsTr("Dotted: the median. Hollow: entered late or amended. Bracket at the end: what is expected at the follow-up.")
                small: true
                soft: true
                Layout.fillWidth: true
            }
            ActButton {
                objectName: "twin"
                text: root.curves.tableShown ? qsTr("Show as curves") : qsTr("Show as a table")
                quiet: true
                onClicked: root.curves.tableShown = !root.curves.tableShown
            }
        }
    }
}
