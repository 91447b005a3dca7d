// The clinic's own limits of lidocaine, each at most the label's.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    property DoseLimits limits
    property real room: 0
    property string barred
    readonly property bool ready: root.limits !== null

    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: qsTr("Your clinic's limit of lidocaine")
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("You may set it lower than the US label's, never higher. An empty field keeps the label's number.")
        soft: true
        Layout.fillWidth: true
    }
    GridLayout {
        columns: root.room > 56 * Theme.textBody ? 4 : root.room > 28 * Theme.textBody ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        Repeater {
            model: root.ready ? root.limits.hints.length : 0

            LineField {
                required property int index

                objectName: "doseLimit" + index
                label: root.limits.labels[index]
                hint: root.limits.hints[index]
                problem: root.limits.problems[index]
                numeric: true
                value: root.limits.texts[index]
                onEdited: text => root.limits.write(index, text)
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.alignment: Qt.AlignTop
            }
        }
    }
    Words {
        text: root.ready ? root.limits.state : ""
        soft: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.barred.length > 0
        text: root.barred
        soft: true
        Layout.fillWidth: true
    }
    ActButton {
        objectName: "saveDoseLimits"
        text: qsTr("Save the limit")
        barred: root.barred
        enabled: root.ready && root.limits.ready && barred.length === 0
        onClicked: root.limits.save()
    }
}
