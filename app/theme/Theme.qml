// Colours, sizes and durations by purpose: the only place where literal ones stand.
//
// A program sets look, textScale, reducedMotion, and once, at its start, bodySize and target.
// Contrast against paper and card is recomputed by tests/screens.
pragma Singleton

import QtQuick

QtObject {
    id: theme

    enum Look { Light, Dark, HighContrast }

    property int look: Theme.Light
    property real textScale: 1          // 1..2
    property bool reducedMotion: false
    property real bodySize: 17          // px at 100 %: 17 on the phone, 14 at the desk
    property real targetSize: 48        // px: 48 under a thumb, 36 under a mouse

    readonly property bool dark: look === Theme.Dark
    readonly property bool stark: look === Theme.HighContrast

    readonly property color paper: dark ? "#10181C" : stark ? "#FFFFFF" : "#F6F4EE"
    readonly property color card: dark ? "#19242A" : "#FFFFFF"
    readonly property color ink: dark ? "#EAF0F1" : stark ? "#000000" : "#1B2730"
    readonly property color inkSoft: dark ? "#A9B8BF" : stark ? "#1A1A1A" : "#4A5862"
    readonly property color tide: dark ? "#6FC3D1" : stark ? "#00394A" : "#0E5A6B"
    readonly property color inkOnTide: dark ? "#10181C" : "#FFFFFF"
    readonly property color left: dark ? "#C9A3EA" : stark ? "#43146B" : "#6A3D8F"
    readonly property color right: dark ? "#F0B069" : stark ? "#5E2F00" : "#9A4F00"
    readonly property color emergency: dark ? "#FF9DB3" : stark ? "#6E0020" : "#8F1239"
    readonly property color callNow: dark ? "#FFB199" : stark ? "#7C1D06" : "#A3341B"
    readonly property color nextDay: dark ? "#A9BEFF" : stark ? "#13256E" : "#2F4A9E"
    readonly property color atReview: inkSoft
    readonly property color emergencyFill: stark ? "#6E0020" : "#8F1239"  // grounds of bars and pages
    readonly property color callNowFill: stark ? "#7C1D06" : "#A3341B"
    readonly property color inkOnAlarm: "#FFFFFF"
    readonly property color line: dark ? "#6F7F88" : stark ? "#000000" : "#7C8890"
    readonly property color hair: dark ? "#33424A" : stark ? "#000000" : "#DCD8CC"
    readonly property color bandEdge: dark ? "#74858E" : stark ? "#000000" : "#717E86"
    readonly property color sand: dark ? "#3B3628" : stark ? "#EFE6CF" : "#EADFC8"
    readonly property color fold: dark ? "#7F8F98" : stark ? "#555555" : "#9AA2A6"
    readonly property color focus: tide
    readonly property color chosen: dark ? "#22343B" : stark ? "#E3F1F4" : "#E4EDEC"

    readonly property string family: "Noto Sans"
    readonly property real reach: 0.125       // of its size, what the last letter of a word may reach over its advance (Arabic)
    readonly property string codeFamily: "Noto Sans Mono CJK SC"  // letters of one width, to read off and type
    readonly property real textSmall: Math.round(bodySize * 0.88 * textScale)
    readonly property real textBody: Math.round(bodySize * textScale)
    // What is large already grows less, so that a phone still shows whole words; never below body text.
    readonly property real textLarge: Math.round(bodySize * 1.25 * (1 + (textScale - 1) * 0.75))
    readonly property real textTitle: Math.round(bodySize * 1.5625 * (1 + (textScale - 1) * 0.5))
    readonly property real textDisplay: Math.round(bodySize * 2.44 * (1 + (textScale - 1) * 0.4))
    readonly property real textHuge: Math.round(bodySize * 5 * (1 + (textScale - 1) * 0.4))  // six digits across a room
    readonly property real leading: 1.45

    readonly property real gapHair: 4
    readonly property real gapSmall: 8
    readonly property real gap: 16
    readonly property real gapLarge: 24
    readonly property real gapPage: 32
    readonly property real corner: 10
    readonly property real hairline: 1
    readonly property real focusWidth: 2
    readonly property real target: Math.round(Math.max(targetSize, targetSize * (0.5 + textScale / 2)))
    readonly property int motion: reducedMotion ? 0 : 140   // ms
}
