// What a grave step asks for: the passphrase once more, and who stands by.
//
// In   asksPassphrase, seconds (names to choose from; none: it is for one), problem
// Out  passphrase, second (a place in seconds, or -1); forget() empties them
import QtQuick
import QtQuick.Layouts
import Ebbline.Controls
import Ebbline.Theme

ColumnLayout {
    id: root

    property bool asksPassphrase: true
    property list<string> seconds: []
    property string problem
    readonly property string passphrase: proof.field.text
    property int second: -1
    property bool fresh: false  // turns true when what was typed is to go

    spacing: Theme.gapSmall
    onFreshChanged: if (root.fresh) { proof.field.clear(); root.second = -1; }

    LineField {
        id: proof

        objectName: "stepPassphrase"
        visible: root.asksPassphrase
        label: qsTr("Passphrase of this desk, once more")
        secret: true
        Layout.fillWidth: true
    }
    Picker {
        visible: root.seconds.length > 0
        label: qsTr("Who stands by: this is for two people")
        options: root.seconds
        current: root.second
        onChosen: index => root.second = index
        Layout.fillWidth: true
    }
    Told {
        text: root.problem
        alarm: true
        Layout.fillWidth: true
    }
}
