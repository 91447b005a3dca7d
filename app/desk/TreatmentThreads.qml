// The threads: drawn on the chart, listed beside it, each with its own details.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

GridLayout {
    id: root

    property TreatmentEditor editor
    readonly property bool ready: root.editor !== null

    columns: width > 62 * Theme.textBody ? 2 : 1
    columnSpacing: Theme.gapLarge
    rowSpacing: Theme.gapLarge

    FacePanel {
        editor: root.editor
        Layout.fillWidth: true
        Layout.preferredWidth: 46
        Layout.alignment: Qt.AlignTop
    }
    ColumnLayout {
        spacing: Theme.gapLarge
        Layout.fillWidth: true
        Layout.preferredWidth: 54
        Layout.alignment: Qt.AlignTop

        PlacementFields {
            visible: root.ready && root.editor.selected > 0
            editor: root.editor
            Layout.fillWidth: true
        }
        Words {
            visible: root.ready && root.editor.placements.count === 0
            text: qsTr("Draw a thread on the chart: press on the entry point and let go at the end. With keys: arrows and Space.")
            soft: true
            Layout.fillWidth: true
        }
        PlacementList {
            editor: root.editor
            Layout.fillWidth: true
        }
    }
}
