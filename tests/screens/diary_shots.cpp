// Takes pictures of every page of the diary: `diary_shots FOLDER LANGUAGE LOOK PERCENT WIDTH HEIGHT`.
// For the eye, not for a verdict; the verdicts are in diary_screens_test.cpp.
#include "app/fonts/fonts.h"
#include "tests/screens/diary_pages.h"
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
        std::fprintf(stderr, "usage: diary_shots FOLDER LANGUAGE LOOK PERCENT WIDTH HEIGHT\n");
        return 2;
    }
    const QDir folder(words[1]);
    folder.mkpath(QStringLiteral("."));
    screens::DemoPatient patient;
    auto program = patient.program(words[2]);
    program->settings()->setLook(words[3].toInt());
    program->settings()->setTextSize(words[4].toInt() / 50 - 2);
    if (!program->show(QSize(words[5].toInt(), words[6].toInt())))
        return 1;
    int number = 0;
    for (const auto& page : screens::diaryPages()) {
        page.show(*program, patient);
        screens::settle(*program->window());
        program->grab(folder.filePath(QStringLiteral("%1_%2.png").arg(++number, 2, 10, QLatin1Char('0')).arg(page.name)));
    }
    return 0;
}
