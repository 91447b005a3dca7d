// The code on a pack, scanned or typed: lot and expiry of the chosen thread.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    property TreatmentEditor editor
    readonly property bool ready: root.editor !== null

    spacing: Theme.gapSmall

    LineField {
        id: pack

        label: qsTr("Code on the pack: scan it, or type it with its brackets")
        problem: root.ready ? root.editor.packProblem : ""
        onAccepted: if (root.editor.takePackCode(pack.field.text)) { pack.field.clear(); }
        // A field lets no control character be typed: the mark after a lot would be lost, and the lot would run on.
        Keys.onPressed: event => {
            if (event.text === "\u001d") {
                pack.field.insert(pack.field.cursorPosition, event.text);
                event.accepted = true;
            }
        }
        Layout.fillWidth: true
    }
    Flow {
        visible: readings.count > 0
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        Repeater {
            id: readings

            model: root.ready ? root.editor.packReadings : []

            ActButton {
                required property string modelData
                required property int index

                objectName: "packReading"
                text: modelData
                quiet: true
                onClicked: {
                    root.editor.takePackReading(index);
                    pack.field.clear();
                }
            }
        }
    }
}
