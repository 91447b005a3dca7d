// Putting in photographs that the clinic took right after the treatment: which view, which file, and a look before it is kept.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

ColumnLayout {
    id: root

    required property ClinicPhotos intake
    property string who
    readonly property bool looking: root.intake.stage === ClinicPhotos.Look
    readonly property bool choosing: root.intake.stage === ClinicPhotos.Choose
    readonly property bool open: root.choosing && root.intake.full.length === 0

    spacing: Theme.gapSmall

    Heading {
        level: 2
        text: qsTr("Right after the treatment: %1").arg(root.who)
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("Pictures that you took with the clinic's own camera. They stay with the clinic's desks and never go to a phone. Place and time of the file are not kept.")
        soft: true
        Layout.fillWidth: true
    }
    Told {
        text: root.intake.problem.length > 0 ? root.intake.problem : root.choosing ? root.intake.full : ""
        alarm: true
        Layout.fillWidth: true
    }
    Choice {
        visible: root.open || root.looking
        label: qsTr("View")
        options: root.intake.views
        current: root.intake.view
        onChosen: index => root.intake.choose(index)
        Layout.fillWidth: true
    }
    Words {
        visible: root.open || root.looking
        text: root.intake.sides
        Layout.fillWidth: true
    }
    Words {
        visible: root.intake.stage === ClinicPhotos.Working
        text: qsTr("Getting the picture ready …")
        strong: true
        Layout.fillWidth: true
    }
    PhotoThumb {
        visible: root.looking
        picture: root.intake.preview
        implicitHeight: 18 * Theme.textBody
        Layout.fillWidth: true
        Layout.fillHeight: false
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("The photograph: %1").arg(root.intake.viewName)
    }
    Words {
        visible: root.looking
        text: qsTr("Is it this patient? Is it the right side? Is it sharp?")
        strong: true
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        ActButton {
            visible: root.looking
            primary: true
            text: qsTr("Keep it")
            hint: root.intake.viewName
            onClicked: root.intake.keep()
        }
        ActButton {
            visible: root.looking
            text: qsTr("Not this one")
            hint: qsTr("It is not kept")
            onClicked: root.intake.again()
        }
        ActButton {
            visible: root.open
            primary: true
            text: qsTr("Choose a picture")
            hint: root.intake.viewName
            onClicked: root.intake.chooseFile()
        }
        ActButton {
            visible: root.choosing
            quiet: true
            text: qsTr("Done")
            hint: qsTr("Closes this form")
            onClicked: root.intake.leave()
        }
    }
    UndoBar {
        text: root.intake.undoText
        onUndone: root.intake.undo()
        onForgotten: root.intake.forgetUndo()
        Layout.fillWidth: true
    }
}
