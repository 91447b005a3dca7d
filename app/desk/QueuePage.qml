// The opening page: who needs the clinic, most urgent first, and why.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property QueueBoard queue: root.program.queue
    readonly property bool keysOn: root.program.settings.singleKeys && list.activeFocus

    title: qsTr("Queue")
    subtitle: root.queue.summary
    // With large text on a small screen the page scrolls as a whole, or its head would fill it.
    scrolls: root.bodyWidth < 34 * Theme.textBody
    Component.onCompleted: list.forceActiveFocus()

    actions: [
        LineField {
            id: search

            objectName: "search"
            hint: root.program.settings.singleKeys ? qsTr("Name or lot  ( / )") : qsTr("Name or lot")
            value: root.queue.search
            onEdited: text => root.queue.search = text
            Layout.fillWidth: true
            Layout.preferredWidth: 16 * Theme.textBody
            Layout.maximumWidth: 16 * Theme.textBody
        },
        ActButton {
            objectName: "filter"
            text: qsTr("Filter")
            hint: qsTr("By who placed the threads, who took the row, and day")
            onClicked: root.queue.filter.choosing = true
        },
        ActButton {
            text: qsTr("Hand over")
            hint: qsTr("A note for whoever takes over")
            onClicked: root.program.openHandOver()
        }
    ]

    Shortcut { sequence: "T"; enabled: root.keysOn; onActivated: root.queue.take(root.queue.rows.keyAt(list.currentIndex)) }
    Shortcut { sequence: "C"; enabled: root.keysOn; onActivated: root.program.call.start(root.queue.rows.keyAt(list.currentIndex)) }
    Shortcut { sequence: "X"; enabled: root.keysOn; onActivated: root.queue.startClosing(root.queue.rows.keyAt(list.currentIndex)) }
    Shortcut { sequence: "F"; enabled: root.keysOn; onActivated: root.program.call.startVisit(root.queue.rows.keyAt(list.currentIndex)) }
    Shortcut { sequence: "N"; enabled: root.keysOn; onActivated: list.currentIndex = Math.max(root.queue.nextUnopened(list.currentIndex), 0) }
    Shortcut { sequence: "H"; enabled: root.keysOn; onActivated: root.program.openHandOver() }
    Shortcut { sequence: "E"; enabled: root.keysOn; onActivated: root.program.openCourse(root.queue.rows.keyAt(list.currentIndex), root.queue.entryAt(list.currentIndex)) }
    Shortcut { sequence: "A"; enabled: root.keysOn; onActivated: root.queue.showAll() }
    Shortcut { sequence: "/"; enabled: root.keysOn; onActivated: search.field.forceActiveFocus(Qt.ShortcutFocusReason) }

    Told {
        text: root.queue.overdue
        alarm: true
        Layout.fillWidth: true
    }
    // Made when there is something to say: a line that appears keeps the height of its first word.
    Repeater {
        model: root.program.hub.unheard.length > 0 ? [root.program.hub.unheard] : []

        Words {
            required property string modelData

            text: modelData
            Layout.fillWidth: true
            Layout.preferredWidth: 1
        }
    }
    Words {
        visible: root.program.handOver.pinned.length > 0
        text: root.program.handOver.pinned
        Layout.fillWidth: true
    }
    Words {
        visible: root.program.roles.closing.length > 0
        text: root.program.roles.closing
        soft: true
        small: true
        Layout.fillWidth: true
    }
    GridLayout {
        columns: root.bodyWidth > 74 * Theme.textBody ? 2 : 1
        columnSpacing: Theme.gapLarge
        rowSpacing: Theme.gapSmall
        Layout.fillWidth: true

        Choice {
            options: root.queue.filters
            current: root.queue.urgencyFilter
            onChosen: index => root.queue.urgencyFilter = index
            Layout.fillWidth: true
            Layout.preferredWidth: 60
        }
        Choice {
            options: root.queue.whoseFilters
            current: root.queue.whose
            onChosen: index => root.queue.whose = index
            Layout.fillWidth: true
            Layout.preferredWidth: 40
        }
    }
    // Made when there is something to say, as above.
    Repeater {
        model: root.queue.filter.chips.length > 0 || root.queue.hiddenUrgent.length > 0 ? 1 : 0

        FilterBar {
            queue: root.queue
            onDone: list.forceActiveFocus()
            Layout.fillWidth: true
        }
    }
    PastVisits {
        queue: root.queue
        Layout.fillWidth: true
    }
    Item {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: root.scrolls ? 24 * Theme.textBody : 0

        // Also to the acts of a row further down.
        FocusFollower {
            area: list
        }
        ListView {
            id: list

            objectName: "queue"
            anchors.fill: parent
            anchors.rightMargin: Theme.gap  // for the scroll bar; on the left where text runs from the right
            clip: true
            spacing: Theme.gapSmall
            model: root.queue.rows
            activeFocusOnTab: true
            keyNavigationEnabled: true
            boundsBehavior: Flickable.StopAtBounds
            highlightMoveDuration: Theme.motion
            Keys.onReturnPressed: root.program.openCourse(root.queue.rows.keyAt(list.currentIndex))
            Keys.onEnterPressed: root.program.openCourse(root.queue.rows.keyAt(list.currentIndex))
            Accessible.role: Accessible.List
            Accessible.name: root.queue.summary
            ScrollBar.vertical: ScrollBar {
                parent: list.parent
                anchors.top: parent.top
                anchors.bottom: parent.bottom
                anchors.right: parent.right
                policy: list.contentHeight > list.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
                Accessible.ignored: true
            }
            delegate: QueueRow {
                width: list.width
                pageHeight: list.height
                closingBarred: root.program.roles.closing
                chosen: ListView.isCurrentItem
                listFocused: list.activeFocus
                onPicked: list.currentIndex = index
                onOpened: root.program.openCourse(row.key)
                onTaken: root.queue.take(row.key)
                onCalled: root.program.call.start(row.key)
                onClosing: root.queue.startClosing(row.key)
            }
        }
        EmptyState {
            anchors.centerIn: parent
            width: Math.min(parent.width, 30 * Theme.textBody)
            visible: list.count === 0
            title: root.queue.emptyTitle
            text: root.queue.emptyText
        }
    }
    FilterPanel {
        filter: root.queue.filter
    }
    CallPanel {
        call: root.program.call
    }
    UndoBar {
        text: root.queue.undoText
        onUndone: root.queue.undo()
        onForgotten: root.queue.forgetUndo()
        Layout.fillWidth: true
    }
    ClosePanel {
        shown: root.queue.closing
        begun: root.program.begun
        place: "close/" + root.queue.closingKey
        title: root.queue.closingTitle
        outcomes: root.program.outcomes
        onDecided: (outcome, note) => root.queue.close(outcome, note)
        onLeft: root.queue.cancelClosing()
    }
}
