// The window of the patient's program: a line with the way back and the way to help, the page, and
// what was just said.
//
// In   program   everything; the window holds nothing of its own
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

ApplicationWindow {
    id: root

    required property DiaryProgram program

    minimumWidth: 320
    minimumHeight: 320
    visible: true
    title: qsTr("Ebbline diary")
    color: Theme.paper
    LayoutMirroring.enabled: root.program.rightToLeft
    LayoutMirroring.childrenInherit: true

    Binding { target: Theme; property: "look"; value: root.program.settings.look }
    Binding { target: Theme; property: "textScale"; value: root.program.settings.textScale }
    Binding { target: Theme; property: "reducedMotion"; value: root.program.settings.reducedMotion }
    Binding { target: Theme; property: "bodySize"; value: 17 }
    Binding { target: Theme; property: "targetSize"; value: 48 }

    // The phone's own way back, on the pages that have one.
    Shortcut {
        sequences: ["Back"]
        enabled: root.program.backShown
        onActivated: root.program.back()
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.bottomMargin: root.program.keyboardHeight
        spacing: 0

        TopLine {
            id: top

            program: root.program
            Layout.fillWidth: true
        }
        Loader {
            id: page

            objectName: "page"
            focus: true
            Layout.fillWidth: true
            Layout.fillHeight: true
            property url shown: root.program.pageSource

            onShownChanged: page.setSource(page.shown, { program: root.program })

            Binding {
                target: page.item
                when: page.item !== null
                property: "title"
                value: top.titleBelow ? root.program.pageTitle : ""
            }
        }
        IdleNotice {
            lock: root.program.idle
            text: qsTr("Not used for a while. The diary locks in half a minute. What you wrote is kept.")
            mostHeight: root.height * 0.45
            Layout.fillWidth: true
        }
        NoticeLine {
            program: root.program
            mostHeight: root.height * 0.45
            Layout.fillWidth: true
        }
    }
}
