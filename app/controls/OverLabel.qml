// The label above a field. Stays on one line until the field has a width.
import QtQuick
import Ebbline.Theme

Words {
    id: label

    required property real room  // width of the field

    width: label.room > 6 * Theme.textBody ? label.room : Math.ceil(natural.advanceWidth + Theme.reach * label.font.pixelSize) + 2
    small: true
    soft: true
    visible: label.text.length > 0
    Accessible.ignored: true

    TextMetrics {
        id: natural

        text: label.text
        font: label.font
    }
}
