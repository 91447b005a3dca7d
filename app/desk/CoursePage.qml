// One course: its curves on one side, what asks for a look on the other.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property CourseBoard course: root.program.course
    readonly property bool wide: root.bodyWidth > 62 * Theme.textBody
    /// Real widths, not shares alone: what was wrapped in a narrow column before the page had its width keeps that height.
    readonly property real columnsWidth: root.bodyWidth - Theme.gapLarge

    title: root.course.name + " · " + root.course.day
    subtitle: root.course.phone + " · " + root.course.reach
    actions: [
        ActButton {
            visible: !root.course.linked
            text: qsTr("Link phone")
            onClicked: root.program.openPairing(root.course.key)
        },
        ActButton {
            objectName: "changePhone"
            visible: root.course.phoneChangeable
            text: qsTr("Link another phone")
            hint: qsTr("Its page says what happens, and asks once")
            quiet: true
            onClicked: root.program.openPairing(root.course.key)
        },
        ActButton {
            text: qsTr("Export")
            hint: qsTr("As a file, or for paper")
            quiet: true
            onClicked: root.course.saveAs()
        },
        ActButton {
            text: qsTr("Print")
            quiet: true
            onClicked: root.course.print()
        },
        ActButton {
            text: qsTr("Follow-up")
            onClicked: root.program.openFollowUp(root.course.key)
        },
        ActButton {
            text: qsTr("Sheet")
            onClicked: root.program.openSheet(root.course.key)
        }
    ]

    Shortcut { sequences: [StandardKey.Print]; onActivated: root.course.print() }
    PatientRecord {
        editor: root.program.patient
        patient: root.course.patientKey
        correction: root.course.corrections[0] ?? ""
        crossed: root.course.crossed
        Layout.fillWidth: true
    }
    Words {
        text: root.course.facts
        soft: true
        small: true
        Layout.fillWidth: true
    }
    Words {
        text: root.course.adherence
        soft: true
        small: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.course.news.length > 0
        text: root.course.news
        strong: true
        Layout.fillWidth: true
    }
    Words {
        visible: root.course.forecast.length > 0
        text: root.course.forecast
        Layout.fillWidth: true
    }
    Told {
        text: root.course.outcome
        Layout.fillWidth: true
    }
    NewEntriesBar {
        course: root.course
        Layout.fillWidth: true
    }
    GridLayout {
        columns: root.wide ? 2 : 1
        columnSpacing: Theme.gapLarge
        rowSpacing: Theme.gapLarge
        Layout.fillWidth: true

        ColumnLayout {
            spacing: Theme.gapLarge
            Layout.fillWidth: true
            Layout.preferredWidth: root.wide ? 0.62 * root.columnsWidth : root.bodyWidth
            Layout.alignment: Qt.AlignTop

            CurvePanel {
                curves: root.course.curves
                room: root.wide ? 0.62 * root.columnsWidth : root.bodyWidth
                Layout.fillWidth: true
            }
            PhotoPanel {
                photos: root.program.photos
                onOpened: photo => root.program.openPhotos(root.course.key, photo)
                Layout.fillWidth: true
            }
            EntryPanel {
                entries: root.course.entries
                course: root.course
                Layout.fillWidth: true
            }
            TreatmentPanel {
                course: root.course
                onCorrecting: root.program.openCorrection(root.course.key)
                Layout.fillWidth: true
            }
        }
        ColumnLayout {
            spacing: Theme.gapLarge
            Layout.fillWidth: true
            Layout.preferredWidth: root.wide ? 0.38 * root.columnsWidth : root.bodyWidth
            Layout.alignment: Qt.AlignTop

            FindingPanel {
                course: root.course
                closingBarred: root.program.roles.closing
                call: root.program.call
                queue: root.program.queue
                Layout.fillWidth: true
            }
            MessagePanel {
                course: root.course
                Layout.fillWidth: true
            }
        }
    }
    CallPanel {
        call: root.program.call
    }
    ClosePanel {
        shown: root.course.closingKey.length > 0
        begun: root.program.begun
        place: "close/" + root.course.key + "/" + root.course.closingKey
        title: qsTr("Close: %1").arg(root.course.closingTitle)
        outcomes: root.program.outcomes
        onDecided: (outcome, note) => root.course.close(outcome, note)
        onLeft: root.course.cancelClosing()
    }
}
