// What was changed, what it would have done, and the signature.
//
// In   editor, barred (why signing is not for who is here)
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property ProtocolEditor editor
    property string barred
    readonly property list<real> shares: [7, 7, 7, 7, 7]

    spacing: Theme.gap

    Heading {
        level: 2
        text: qsTr("What is changed")
        Layout.fillWidth: true
    }
    Words {
        visible: root.editor.changes.length === 0
        text: qsTr("Nothing yet.")
        soft: true
        Layout.fillWidth: true
    }
    Repeater {
        model: root.editor.changes

        Words {
            required property string modelData

            text: modelData
            Layout.fillWidth: true
        }
    }
    Heading {
        level: 2
        text: qsTr("Rehearsal")
        Layout.topMargin: Theme.gap
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("Runs the rules over past courses and over invented ones whose truth is known. Nothing changes for anybody by it.")
        soft: true
        Layout.fillWidth: true
    }
    WorkBar {
        visible: root.editor.rehearsing
        part: root.editor.progress
        text: qsTr("Rehearsing. The desk stays free meanwhile.")
        Layout.fillWidth: true
    }
    Words {
        visible: root.editor.verdict.length > 0
        text: root.editor.verdict
        font.pixelSize: Theme.textLarge
        Layout.fillWidth: true
    }
    ColumnLayout {
        visible: root.editor.figures.length > 0
        spacing: 0
        Layout.fillWidth: true

        TableLine {
            strong: true
            cells: root.editor.figuresHeader
            widths: root.shares
            Layout.fillWidth: true
        }
        Repeater {
            model: root.editor.figures

            TableLine {
                required property var modelData

                cells: modelData
                widths: root.shares
                Layout.fillWidth: true
            }
        }
    }
    Heading {
        visible: root.editor.differences.length > 0
        level: 2
        text: qsTr("Past courses, one by one")
        Layout.topMargin: Theme.gap
        Layout.fillWidth: true
    }
    Repeater {
        model: root.editor.differences

        TableLine {
            required property var modelData

            cells: modelData
            widths: [6, 6, 9, 9]
            Layout.fillWidth: true
        }
    }
    Repeater {
        model: root.editor.missing

        Words {
            required property string modelData

            text: modelData
            color: Theme.callNow
            Layout.fillWidth: true
        }
    }
    Words {
        visible: root.barred.length > 0
        text: root.barred
        strong: true
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        ActButton {
            text: root.editor.rehearsed ? qsTr("Rehearse again") : qsTr("Rehearse")
            primary: !root.editor.rehearsed
            enabled: !root.editor.rehearsing
            onClicked: root.editor.rehearse()
        }
        ActButton {
            text: qsTr("Sign it")
            hint: qsTr("It goes to phones that are linked from now on.")
            primary: root.editor.rehearsed
            barred: root.barred
            enabled: root.editor.missing.length === 0 && barred.length === 0
            onClicked: root.editor.sign()
        }
        ActButton {
            visible: root.editor.bringsRange
            width: Math.min(implicitWidth, root.width)
            text: qsTr("Keep the usual range in use")
            hint: qsTr("Drops the range that came with the file, and its thresholds; can be undone.")
            quiet: true
            onClicked: root.editor.keepRange()
        }
    }
    Heading {
        visible: root.editor.versions.length > 0
        level: 2
        text: qsTr("Signed before")
        Layout.topMargin: Theme.gap
        Layout.fillWidth: true
    }
    Repeater {
        model: root.editor.versions

        RowLayout {
            id: version

            required property string modelData
            required property int index

            spacing: Theme.gap
            Layout.fillWidth: true

            Words {
                text: version.modelData
                Layout.fillWidth: true
            }
            ActButton {
                text: qsTr("Take it up again")
                hint: version.modelData
                quiet: true
                onClicked: root.editor.takeUp(version.index)
            }
        }
    }
}
