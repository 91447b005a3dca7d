// What many courses teach: one question at a time, each answer with its limits, its method and its file.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

PageFrame {
    id: root

    required property DeskProgram program
    readonly property PracticeBoard practice: root.program.practice
    readonly property bool shown: root.program.roles.figures.length === 0

    title: qsTr("Practice")
    subtitle: root.shown ? root.practice.summary : ""

    Words {
        visible: !root.shown
        text: root.program.roles.figures
        strong: true
        Layout.fillWidth: true
    }
    Choice {
        visible: root.shown
        options: root.practice.parts
        current: root.practice.part
        onChosen: index => root.practice.part = index
        Layout.fillWidth: true
    }
    WorkBar {
        visible: root.shown && root.practice.working
        part: root.practice.progress
        text: qsTr("Working the figures out. The desk stays free meanwhile.")
        Layout.fillWidth: true
    }
    Told {
        visible: root.shown && root.practice.outcome.length > 0
        text: root.practice.outcome
        Layout.fillWidth: true
    }
    ComparisonChoice {
        visible: root.shown && root.practice.part === PracticeBoard.Comparison
        practice: root.practice
        Layout.fillWidth: true
    }
    Repeater {
        model: root.shown ? root.practice.figures : []

        FigureCard {
            required property practiceFigure modelData

            figure: modelData
            onSaving: kind => root.practice.saveAs(figure.key, kind)
            Layout.fillWidth: true
        }
    }
    LotPanel {
        visible: root.shown && root.practice.part === PracticeBoard.Lots
        lots: root.program.lots
        onOpened: course => root.program.openCourse(course)
        Layout.fillWidth: true
    }
    BandPanel {
        visible: root.shown && root.practice.part === PracticeBoard.UsualRange
        bands: root.program.bands
        begun: root.program.begun
        barred: root.program.roles.protocols
        Layout.fillWidth: true
    }
}
