// The window of the clinic's program: the rail with its pages, notices, and the page itself.
//
// In   program   everything; the window holds nothing of its own
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Ebbline.Desk
import Ebbline.Theme

ApplicationWindow {
    id: root

    required property DeskProgram program

    minimumWidth: 800
    minimumHeight: 560
    visible: true
    title: qsTr("Ebbline, desk")  // never a patient's name: titles show up in lists of windows
    color: Theme.paper
    LayoutMirroring.enabled: root.program.rightToLeft
    LayoutMirroring.childrenInherit: true

    Binding { target: Theme; property: "look"; value: root.program.settings.look }
    Binding { target: Theme; property: "textScale"; value: root.program.settings.textPercent / 100 }
    Binding { target: Theme; property: "reducedMotion"; value: root.program.settings.reducedMotion }
    Binding { target: Theme; property: "bodySize"; value: 14 }
    Binding { target: Theme; property: "targetSize"; value: 36 }

    Shortcut {
        sequences: ["F1", "?"]
        onActivated: root.program.helpShown = !root.program.helpShown
    }
    Shortcut {
        sequence: "Ctrl+L"
        enabled: root.program.open
        onActivated: root.program.lock()
    }
    Shortcut {
        sequence: "Ctrl+1"
        onActivated: root.program.openQueue()
    }
    Shortcut {
        sequence: "Ctrl+2"
        onActivated: root.program.openCourses()
    }
    Shortcut {
        sequence: "Ctrl+N"
        onActivated: root.program.openTreatment()
    }

    RowLayout {
        anchors.fill: parent
        spacing: 0

        Rail {
            visible: root.program.open
            program: root.program
            Layout.fillHeight: true
        }
        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true
            Layout.fillHeight: true

            NoticeBar {
                text: root.program.demo ? qsTr("Invented patients: nothing here is real, nothing is sent, and all of it is gone when you lock the desk.") : ""
                actText: qsTr("Leave the demo")
                onActed: root.program.lock()
                Layout.fillWidth: true
            }
            NoticeBar {
                text: root.program.notice
                alarming: true
                actText: qsTr("Understood")
                onActed: root.program.dismissNotice()
                Layout.fillWidth: true
            }
            NoticeBar {
                text: root.program.open ? root.program.hub.trouble : ""
                actText: qsTr("Try again")
                onActed: root.program.hub.syncNow()
                Layout.fillWidth: true
            }
            NoticeBar {
                text: root.program.page === "keep" ? "" : root.program.keep.overdue
                actText: qsTr("Backup and keys")
                onActed: root.program.openKeep()
                Layout.fillWidth: true
            }
            Loader {
                id: page

                property url shown: root.program.pageSource

                objectName: "page"
                focus: true
                // With its size from the start: a page that is first laid out at width 0 keeps gaps.
                onShownChanged: page.setSource(page.shown, { program: root.program, width: page.width, height: page.height })
                Layout.fillWidth: true
                Layout.fillHeight: true
            }
        }
    }
    PatientPanel {
        editor: root.program.patient
    }
    HelpPanel {
        program: root.program
    }
    IdlePanel {
        program: root.program
    }
}
