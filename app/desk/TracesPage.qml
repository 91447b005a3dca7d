// Who did what at the clinic's desks, newest first.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property TraceBoard board: root.program.traces

    title: qsTr("Who did what")
    subtitle: root.board.says
    // With large text the page scrolls as a whole, or its head would fill it.
    scrolls: root.bodyWidth < 44 * Theme.textBody
    actions: [
        ActButton {
            text: qsTr("Save the list")
            barred: root.program.roles.keeping
            enabled: root.board.rows.count > 0 && barred.length === 0
            onClicked: root.board.saveAs()
        },
        ActButton {
            objectName: "olderTraces"
            visible: root.board.more
            text: qsTr("Show older lines")
            onClicked: root.board.showMore()
        },
        ActButton {
            text: qsTr("Back to the clinic")
            onClicked: root.program.openClinic()
        }
    ]

    Words {
        text: qsTr("What is written at a desk leaves a line: patients, treatments, findings, messages, protocols, and what was done with keys, backups, desks and phones. Opening entries does, looking at a course does not, nor does a backup, a passphrase or a recovery code that was finished after the desk was locked, if the program ended before it was opened again. Where no name was noted, the desk is named.")
        soft: true
        Layout.fillWidth: true
        Layout.maximumWidth: 60 * Theme.textBody
    }
    Words {
        visible: root.program.roles.keeping.length > 0
        text: root.program.roles.keeping
        strong: true
        Layout.fillWidth: true
    }
    LineField {
        objectName: "traceSearch"
        label: qsTr("Search: a name, an act, a day")
        value: root.board.search
        onEdited: text => root.board.search = text
        Layout.maximumWidth: 30 * Theme.textBody
        Layout.fillWidth: true
    }
    Told {
        text: root.board.outcome
        Layout.fillWidth: true
    }
    Words {
        visible: root.board.rows.count === 0
        text: root.board.search.length > 0 ? qsTr("No line says that.") : qsTr("Nothing has been done here yet.")
        Layout.fillWidth: true
    }
    TableLine {
        visible: root.board.rows.count > 0
        strong: true
        cells: [qsTr("When"), qsTr("Who"), qsTr("What"), qsTr("Patient")]
        widths: [9, 8, 12, 8]
        Layout.fillWidth: true
        Layout.rightMargin: Theme.gap
    }
    Item {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: root.scrolls ? 16 * Theme.textBody : 0

        ListView {
            id: list

            objectName: "traces"
            anchors.fill: parent
            anchors.rightMargin: Theme.gap  // for the scroll bar; on the left where text runs from the right
            clip: true
            model: root.board.rows
            activeFocusOnTab: true
            boundsBehavior: Flickable.StopAtBounds
            highlightMoveDuration: Theme.motion
            Accessible.role: Accessible.List
            Accessible.name: root.board.says
            ScrollBar.vertical: ScrollBar {
                parent: list.parent
                anchors.top: parent.top
                anchors.bottom: parent.bottom
                anchors.right: parent.right
                policy: list.contentHeight > list.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
                Accessible.ignored: true
            }
            delegate: TableLine {
                required property traceRow row

                width: list.width
                cells: [row.when, row.who, row.what, row.whom]
                widths: [9, 8, 12, 8]
                spoken: row.spoken
                opens: row.course.length > 0
                onOpened: root.program.openCourse(row.course)
            }
        }
    }
}
