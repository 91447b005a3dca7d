// The curve that raised the row, in small; the row's words say the same.
import QtQuick
import Ebbline.Charts
import Ebbline.Controls
import Ebbline.Desk
import Ebbline.Theme

Column {
    id: root

    required property queueRow row

    spacing: 0

    Sparkline {
        width: 10 * Theme.textBody
        height: 2.6 * Theme.textBody
        leftCurve: root.row.leftCurve
        rightCurve: root.row.rightCurve
        leftColor: Theme.left
        rightColor: Theme.right
        sand: Theme.sand
        line: Theme.line
        Accessible.role: Accessible.Chart
        Accessible.name: root.row.leftCurve.sentence + " " + root.row.rightCurve.sentence
    }
    Words {
        text: root.row.sparkName
        small: true
        soft: true
    }
}
