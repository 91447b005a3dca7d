// One figure: what it says, its picture or its table, what to beware of, how it was made, and its files.
//
// In   figure
// Out  saving(kind: "csv", "png" or "svg")
import QtQuick
import QtQuick.Layouts
import Ebbline.Charts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Card {
    id: root

    required property practiceFigure figure
    property bool asTable: false
    readonly property list<real> shares: [7, 5, 5, 5, 8, 5]
    signal saving(string kind)

    implicitHeight: content.implicitHeight + 2 * Theme.gapLarge

    ColumnLayout {
        id: content

        x: Theme.gapLarge
        y: Theme.gapLarge
        width: parent.width - 2 * Theme.gapLarge
        spacing: Theme.gap

        Heading {
            level: 2
            text: root.figure.title
            Layout.fillWidth: true
        }
        Words {
            text: root.figure.says
            soft: !root.figure.enough
            font.pixelSize: Theme.textLarge
            Layout.fillWidth: true
        }
        FigurePlot {
            visible: !root.asTable && !root.figure.picture.empty
            picture: root.figure.picture
            ink: Theme.ink
            inkSoft: Theme.inkSoft
            line: Theme.line
            tone: Theme.tide
            paper: Theme.card
            font.family: Theme.family
            font.pixelSize: Theme.textSmall
            implicitHeight: naturalHeight
            Accessible.role: Accessible.Chart
            Accessible.name: root.figure.title
            Accessible.description: root.figure.says
            Layout.fillWidth: true
        }
        ColumnLayout {
            visible: root.asTable
            spacing: 0
            Layout.fillWidth: true

            TableLine {
                strong: true
                cells: root.figure.header
                widths: root.shares
                Layout.fillWidth: true
            }
            Repeater {
                model: root.asTable ? root.figure.table : []

                TableLine {
                    required property var modelData

                    cells: modelData
                    widths: root.shares
                    Layout.fillWidth: true
                }
            }
        }
        Words {
            visible: root.figure.caution.length > 0
            text: root.figure.caution
            Layout.fillWidth: true
        }
        Words {
            visible: root.figure.method.length > 0
            text: qsTr("How: %1").arg(root.figure.method)
            soft: true
            small: true
            Layout.fillWidth: true
        }
        Flow {
            visible: root.figure.method.length > 0
            spacing: Theme.gapSmall
            Layout.fillWidth: true

            ActButton {
                visible: root.figure.header.length > 0
                text: root.asTable ? qsTr("Show the picture") : qsTr("Show as a table")
                hint: root.figure.title
                onClicked: root.asTable = !root.asTable
            }
            ActButton {
                text: qsTr("Save as CSV")
                hint: root.figure.title
                quiet: true
                onClicked: root.saving("csv")
            }
            ActButton {
                visible: !root.figure.picture.empty
                text: qsTr("Save as PNG")
                hint: root.figure.title
                quiet: true
                onClicked: root.saving("png")
            }
            ActButton {
                visible: !root.figure.picture.empty
                text: qsTr("Save as SVG")
                hint: root.figure.title
                quiet: true
                onClicked: root.saving("svg")
            }
        }
    }
}
