// On every page on which something is written: this phone is no longer linked, and what to do.
import QtQuick
import Ebbline.Controls
import Ebbline.Diary

Told {
    required property DiaryProgram program

    text: program.today.replaced
    alarm: true
}
