// Usual messages: chosen, read in both languages, then put into the field, where they can still be changed.
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Column {
    id: root

    required property CourseBoard course
    readonly property UsualBoard usual: root.course.usual
    readonly property bool reading: root.usual.chosen >= 0

    spacing: Theme.gapSmall

    Words {
        width: root.width
        visible: text.length > 0
        text: root.usual.caution
        strong: true
        color: Theme.callNow
    }
    Choice {
        width: root.width
        label: qsTr("Usual messages")
        options: root.usual.titles
        current: root.usual.chosen
        onChosen: index => root.usual.chosen = index
    }
    Picker {
        width: root.width
        visible: root.reading
        label: qsTr("Language of the patient")
        options: root.usual.languages
        current: root.usual.language
        onChosen: index => root.usual.language = index
    }
    Words {
        width: root.width
        visible: root.reading
        text: root.usual.languageText
        small: true
        soft: true
    }
    Words {
        width: root.width
        visible: root.reading && root.usual.theirs.length > 0
        text: root.usual.theirsLabel
        small: true
        soft: true
    }
    Words {
        width: root.width
        visible: root.usual.theirs.length > 0
        text: root.usual.theirs
    }
    Words {
        width: root.width
        visible: root.usual.ours.length > 0
        text: qsTr("In your language")
        small: true
        soft: true
    }
    Words {
        width: root.width
        visible: root.usual.ours.length > 0
        text: root.usual.ours
    }
    ActButton {
        objectName: "takeUsual"
        width: Math.min(implicitWidth, root.width)
        visible: root.reading
        text: qsTr("Put it into the message")
        hint: qsTr("It can be changed there before it is sent")
        enabled: root.usual.theirs.length > 0
        onClicked: root.course.takeUsual()
    }
}
