// Running text in the theme's type. Wraps; never cut off.
import QtQuick
import Ebbline.Theme

Text {
    id: words

    property bool soft: false
    property bool strong: false
    property bool small: false

    color: words.soft ? Theme.inkSoft : Theme.ink
    font.family: Theme.family
    font.pixelSize: words.small ? Theme.textSmall : Theme.textBody
    font.weight: words.strong ? Font.DemiBold : Font.Normal
    wrapMode: Text.Wrap
    lineHeight: 1.2
    textFormat: Text.PlainText
    horizontalAlignment: Text.AlignLeft
    Accessible.role: Accessible.StaticText
    Accessible.name: words.text
    Accessible.ignored: words.text.length === 0
}
