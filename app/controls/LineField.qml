// One line to type, its label above it and what is wrong below it.
//
// In   label, value, hint (shown while empty), problem, secret, shown (a secret that may be read), numeric,
//      fixed (to read and copy only)
// Out  edited(text) while typing; finished(text) when leaving it
import QtQuick
import QtQuick.Templates as T
import Ebbline.Theme

Item {
    id: root

    property string label
    property string value
    property string hint
    property string problem
    property bool secret: false
    property bool shown: false
    property bool numeric: false
    property bool fixed: false
    readonly property alias field: input
    signal edited(string text)
    signal finished(string text)
    signal accepted

    // Wide to begin with, so that nothing wraps before the layout has given a width: a layout that
    // once saw a higher field keeps room for it.
    implicitWidth: 40 * Theme.textBody
    implicitHeight: input.y + input.height + (wrong.visible ? Theme.gapHair + wrong.height : 0)

    OverLabel {
        id: over

        room: root.width
        text: root.label
    }
    T.TextField {
        id: input

        y: over.visible ? over.height + Theme.gapHair : 0
        width: root.width
        text: root.value
        implicitHeight: Math.max(Theme.target, contentHeight + 2 * Theme.gapSmall)
        leftPadding: Theme.gapSmall + Theme.gapHair
        rightPadding: Theme.gapSmall + Theme.gapHair
        color: Theme.ink
        selectionColor: Theme.tide
        selectedTextColor: Theme.inkOnTide
        font.family: Theme.family
        font.pixelSize: Theme.textBody
        verticalAlignment: TextInput.AlignVCenter
        echoMode: root.secret && !root.shown ? TextInput.Password : TextInput.Normal
        // A secret is no word that a keyboard may learn, complete or begin with a capital, in sight or not.
        inputMethodHints: root.numeric ? Qt.ImhFormattedNumbersOnly
                                       : root.secret ? Qt.ImhSensitiveData | Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase : Qt.ImhNone
        selectByMouse: true
        // However the text came: typed, pasted, or set by an assistive program.
        onTextChanged: if (input.text !== root.value) root.edited(input.text)
        readOnly: root.fixed
        onEditingFinished: root.finished(input.text)
        onAccepted: root.accepted()
        Accessible.role: Accessible.EditableText
        Accessible.name: root.label.length > 0 ? root.label : root.hint
        Accessible.description: root.problem
        Accessible.readOnly: root.fixed

        background: Rectangle {
            color: Theme.card
            radius: Theme.corner
            border.width: root.problem.length > 0 ? Theme.focusWidth : Theme.hairline
            border.color: root.problem.length > 0 ? Theme.callNow : Theme.line

            Text {
                anchors.fill: parent
                anchors.leftMargin: input.leftPadding
                anchors.rightMargin: input.rightPadding
                visible: input.text.length === 0 && input.preeditText.length === 0
                text: root.hint
                color: Theme.inkSoft
                font: input.font
                elide: Text.ElideRight
                verticalAlignment: Text.AlignVCenter
                Accessible.ignored: true
            }
            FocusRing {
                shown: input.activeFocus
            }
        }
    }
    Told {
        id: wrong

        y: input.y + input.height + Theme.gapHair
        width: root.width
        text: root.problem
        small: true
        alarm: true
    }
}
