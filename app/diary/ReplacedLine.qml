// On every page on which something is written: this phone is no longer linked, and what to do.
import QtQuick
import Ebbline.Controls
import Ebbline.Diary
import Ebbline.Theme

Words {
    required property DiaryProgram program

    visible: text.length > 0
    text: program.today.replaced
    color: Theme.callNow
    strong: true
    Accessible.role: Accessible.AlertMessage
}
