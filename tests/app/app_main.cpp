// Runs the cases inside an application with the programs' own fonts, so that letters and charts are
// drawn as the programs draw them. Offscreen unless told else.
#include "app/fonts/fonts.h"

#include <catch2/catch_session.hpp>

#include <QApplication>
#include <QLocale>

int main(int argc, char* argv[])
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    int count = 1;
    QApplication application(count, argv);
    ebbline::app::loadFonts();
    QLocale::setDefault(QLocale(QLocale::English));
    return Catch::Session().run(argc, argv);
}
