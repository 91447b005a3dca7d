// Runs the cases inside an application, so that fonts and charts work. Offscreen unless told else.
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
    QLocale::setDefault(QLocale(QLocale::English));
    return Catch::Session().run(argc, argv);
}
