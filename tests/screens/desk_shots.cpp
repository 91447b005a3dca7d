// Takes pictures of every page of the desk: `desk_shots FOLDER LANGUAGE LOOK PERCENT WIDTH HEIGHT`.
// For the eye, not for a verdict; the verdicts are in desk_screens_test.cpp.
#include "app/fonts/fonts.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/desk_pages.h"
#include "tests/screens/screen_check.h"

#include <QApplication>
#include <QDir>

#include <cstdio>

using namespace ebbline;

int main(int argc, char* argv[])
{
    QApplication application(argc, argv);
    app::loadFonts();
    const auto words = QApplication::arguments();
    if (words.size() < 7) {
        std::fprintf(stderr, "usage: desk_shots FOLDER LANGUAGE LOOK PERCENT WIDTH HEIGHT\n");
        return 2;
    }
    const QDir folder(words[1]);
    folder.mkpath(QStringLiteral("."));
    screens::DemoClinic clinic(screens::pastCourses);
    const QSize size(words[5].toInt(), words[6].toInt());
    auto program = clinic.program(words[2], clinic.hub());
    program->settings()->setLook(words[3].toInt());
    program->settings()->setTextPercent(words[4].toInt());
    if (!program->show(size)) {
        return 1;
    }
    for (const auto& page : screens::deskPages()) {
        page.show(*program, clinic);
        screens::settle(*program->window());
        program->grab(folder.filePath(page.name + QStringLiteral(".png")));
    }
    program->sheet()->write(folder.filePath(QStringLiteral("sheet.pdf")));
    auto fresh = clinic.freshProgram(words[2], clinic.hub());
    fresh->settings()->setLook(words[3].toInt());
    fresh->settings()->setTextPercent(words[4].toInt());
    if (!fresh->show(size)) {
        return 1;
    }
    for (const auto& page : screens::deskDoorPages()) {
        page.show(*fresh, *program);
        screens::settle(*fresh->window());
        fresh->grab(folder.filePath(page.name + QStringLiteral(".png")));
    }
    return 0;
}
