// A sheet of card on the paper, with a hairline instead of a shadow.
import QtQuick
import Ebbline.Theme

Rectangle {
    color: Theme.card
    radius: Theme.corner
    border.width: Theme.hairline
    border.color: Theme.hair
}
