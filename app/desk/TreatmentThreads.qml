// The threads: drawn on the chart, listed beside it, each with its own details.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Item {
    id: root

    property TreatmentEditor editor
    property real room: 0
    readonly property bool ready: root.editor !== null
    readonly property bool wide: root.room > 50 * Theme.textBody

    implicitHeight: root.wide ? Math.max(face.implicitHeight, details.implicitHeight)
                              : face.implicitHeight + Theme.gapLarge + details.implicitHeight

    FacePanel {
        id: face

        anchors.left: parent.left
        width: root.wide ? root.width * 0.44 : Math.min(root.width, 40 * Theme.textBody)
        editor: root.editor
    }
    ColumnLayout {
        id: details

        anchors.right: parent.right
        y: root.wide ? 0 : face.implicitHeight + Theme.gapLarge
        width: root.wide ? root.width * 0.56 - Theme.gapLarge : root.width
        spacing: Theme.gapLarge

        PlacementFields {
            visible: root.ready && root.editor.selected > 0
            editor: root.editor
            room: root.wide ? root.room * 0.56 - Theme.gapLarge : root.room
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
        PlanBeside {
            editor: root.editor
            Layout.fillWidth: true
        }
    }
}
