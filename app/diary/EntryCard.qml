// One entry of the past: when, what, what it raised, and where it is.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Card {
    id: root

    required property var modelData
    required property DiaryProgram program
    property bool opened: false
    property bool advised: false

    implicitHeight: column.implicitHeight + 2 * Theme.gap

    ColumnLayout {
        id: column

        anchors.fill: parent
        anchors.margins: Theme.gap
        spacing: Theme.gapSmall

        Words {
            text: root.modelData.title
            strong: true
            Layout.fillWidth: true
        }
        Words {
            visible: root.modelData.warning.length > 0
            text: root.modelData.warning
            color: root.modelData.loud ? Theme.callNow : Theme.nextDay
            strong: true
            Layout.fillWidth: true
        }
        Words {
            visible: root.advised
            text: root.modelData.advice
            Layout.fillWidth: true
        }
        Words {
            visible: root.modelData.scores.length > 0
            text: root.modelData.scores
            Layout.fillWidth: true
        }
        Words {
            visible: root.modelData.note.length > 0
            text: root.modelData.note
            Layout.fillWidth: true
        }
        Flow {
            id: photos

            visible: root.modelData.photos.length > 0
            spacing: Theme.gapSmall
            Layout.fillWidth: true
            readonly property int across: Math.max(1, Math.min(4, Math.floor((photos.width + Theme.gapSmall)
                                                                            / (6 * Theme.textSmall + Theme.gapSmall))))

            Repeater {
                model: root.modelData.photos

                PhotoThumb {
                    program: root.program
                    width: Math.min(9 * Theme.bodySize, (photos.width - (photos.across - 1) * Theme.gapSmall) / photos.across)
                }
            }
        }
        Words {
            visible: root.modelData.photosState.length > 0
            text: root.modelData.photosState
            color: Theme.tide
            small: true
            Layout.fillWidth: true
        }
        Words {
            visible: root.modelData.marks.length > 0
            text: root.modelData.marks
            small: true
            soft: true
            Layout.fillWidth: true
        }
        Words {
            visible: !root.modelData.bare
            text: root.modelData.state
            color: Theme.tide
            small: true
            Layout.fillWidth: true
        }
        Words {
            visible: root.opened
            text: root.modelData.before
            soft: true
            small: true
            Layout.fillWidth: true
        }
        Flow {
            id: acts

            visible: !root.modelData.bare
            spacing: Theme.gapSmall
            Layout.fillWidth: true

            ActButton {
                text: root.modelData.begun ? qsTr("Go on correcting") : qsTr("Correct")
                hint: root.modelData.title
                width: Math.min(implicitWidth, acts.width)
                onClicked: root.program.amend(root.modelData.key)
            }
            ActButton {
                visible: root.modelData.advice.length > 0
                text: root.advised ? qsTr("Hide what to do") : qsTr("What to do")
                hint: root.modelData.title
                width: Math.min(implicitWidth, acts.width)
                onClicked: root.advised = !root.advised
            }
            ActButton {
                visible: root.modelData.before.length > 0
                text: root.opened ? qsTr("Hide what was before") : qsTr("What was before")
                hint: root.modelData.title
                width: Math.min(implicitWidth, acts.width)
                onClicked: root.opened = !root.opened
            }
        }
    }
}
