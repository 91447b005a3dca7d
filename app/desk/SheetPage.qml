// The follow-up sheet as it prints.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property SheetBoard sheet: root.program.sheet

    title: qsTr("Follow-up sheet")
    subtitle: root.sheet.outcome.length > 0 ? root.sheet.outcome : root.sheet.name
    actions: [
        Choice {
            options: ["A4", "Letter"]
            current: root.sheet.letter ? 1 : 0
            onChosen: index => root.sheet.letter = index === 1
            Layout.fillWidth: false
            Layout.preferredWidth: 10 * Theme.textBody
        },
        ActButton {
            text: qsTr("Print")
            primary: true
            enabled: !root.sheet.working
            onClicked: root.sheet.print()
        },
        ActButton {
            text: qsTr("Save as PDF")
            enabled: !root.sheet.working
            onClicked: root.sheet.saveAs()
        }
    ]

    Shortcut { sequences: [StandardKey.Print]; onActivated: root.sheet.print() }
    TickBox {
        visible: root.sheet.photoChoice
        text: qsTr("With photographs: the first and the last of each view")
        checked: root.sheet.photos
        onToggled: root.sheet.photos = checked
        Layout.fillWidth: true
    }
    Told {
        visible: root.sheet.working
        text: qsTr("The photographs are being opened.")
        soft: true
        Layout.fillWidth: true
    }
    Item {
        implicitHeight: 0
        Accessible.role: Accessible.StaticText
        Accessible.name: root.sheet.text
    }
    Repeater {
        model: root.sheet.pageCount

        Rectangle {
            id: page

            required property int index

            implicitWidth: Math.min(root.bodyWidth, 860)
            implicitHeight: implicitWidth * root.sheet.pageRatio
            border.width: Theme.hairline
            border.color: Theme.line
            Layout.alignment: Qt.AlignHCenter

            SheetPageView {
                anchors.fill: parent
                anchors.margins: 1
                sheet: root.sheet
                page: page.index
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("Page %L1 of the sheet").arg(page.index + 1)
            }
        }
    }
}
