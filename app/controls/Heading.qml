// A heading: large for a page, small (level 2) for a part of it.
import QtQuick
import Ebbline.Theme

Text {
    id: heading

    property int level: 1

    color: Theme.ink
    font.family: Theme.family
    font.pixelSize: heading.level === 1 ? Theme.textTitle : Theme.textLarge
    font.weight: Font.DemiBold
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    horizontalAlignment: Text.AlignLeft
    Accessible.role: Accessible.Heading
    Accessible.name: heading.text
}
