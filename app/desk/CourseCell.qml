// A cell in the list of courses.
import QtQuick
import Ebbline.Controls
import Ebbline.Theme

Words {
    rightPadding: Theme.gapSmall
    verticalAlignment: Text.AlignVCenter
    Accessible.ignored: true  // the row says it all
}
