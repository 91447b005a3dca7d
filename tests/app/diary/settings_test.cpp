// How the diary looks, speaks and locks: kept at once, whatever stands in the file.
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>

#include <QSettings>

using namespace ebbline;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

const QString passphrase = QString::fromLatin1(DemoPatient::passphrase);
const QString other = QStringLiteral("nine slow otters dive");

QString fileOf(DemoPatient& patient)
{
    return QString::fromStdString(patient.folder().string() + ".ini");
}

}  // namespace

TEST_CASE("every setting is in its file before the touch is over, and is there the next time", "[diary][settings]")
{
    DemoPatient patient;
    {
        auto program = patient.joined(QStringLiteral("en"));
        auto& settings = *program->settings();
        settings.setTextSize(2);
        settings.setLook(1);
        settings.setReducedMotion(true);
        settings.setFahrenheit(true);
        settings.setLanguage(1);
        // Read beside the program, as after a kill.
        const QSettings file(fileOf(patient), QSettings::IniFormat);
        CHECK(file.value("text").toInt() == 2);
        CHECK(file.value("look").toInt() == 1);
        CHECK(file.value("calm").toBool());
        CHECK(file.value("fahrenheit").toBool());
        CHECK(file.value("language").toString() == settings.languageCode());
    }
    auto again = patient.program({});
    CHECK(again->settings()->textScale() == 2);
    CHECK(again->settings()->look() == 1);
    CHECK(again->settings()->isReducedMotion());
    CHECK(again->settings()->isFahrenheit());
    CHECK(again->settings()->language() == 1);
}

TEST_CASE("a settings file with nonsense in it gives a program that can be read", "[diary][settings]")
{
    DemoPatient patient;
    {
        QSettings file(fileOf(patient), QSettings::IniFormat);
        file.setValue("text", 900);
        file.setValue("look", -3);
        file.setValue("language", "xx");
    }
    auto program = patient.program({});
    CHECK(program->settings()->textScale() == 2);
    CHECK(program->settings()->look() == 0);
    CHECK(program->settings()->language() >= 0);
}

TEST_CASE("each language can be chosen by its own name", "[diary][settings]")
{
    DemoPatient patient;
    auto program = patient.program(QStringLiteral("de"));
    auto& settings = *program->settings();
    const QStringList names = settings.languageNames();
    const QStringList codes{"en", "de", "es", "fr", "pt_BR", "tr", "ar", "zh_CN"};
    REQUIRE(names.size() == codes.size());
    for (int i = 0; i < names.size(); ++i) {
        settings.setLanguage(i);
        CHECK(settings.language() == i);
        CHECK(settings.languageCode() == codes[i]);
        CHECK(names.count(names[i]) == 1);
    }
}

TEST_CASE("a temperature is said in the unit that was chosen, everywhere", "[diary][settings]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->settings()->setFahrenheit(true);
    program->openEntry();
    program->entry()->writeTemperature(QStringLiteral("101.3"));
    program->entry()->save();
    CHECK(program->history()->entries().first().scores.contains(QStringLiteral("Temperature: 101.3 °F")));
    CHECK(program->warning()->callSigns().first().contains(QStringLiteral("100.4 °F")));

    program->settings()->setFahrenheit(false);
    CHECK(program->history()->entries().first().scores.contains(QStringLiteral("Temperature: 38.5 °C")));
    CHECK(program->warning()->callSigns().first().contains(QStringLiteral("38 °C")));
}

TEST_CASE("the passphrase changes only for who knows it, and the old one opens nothing afterwards", "[diary][keys]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->keys();
    program->openKeys();

    board.change(QStringLiteral("a wrong guess at it"), other, other);
    CHECK(board.oldProblem() == QLatin1String("That passphrase does not open the diary. Try again."));
    board.change(passphrase, QStringLiteral("short"), QStringLiteral("short"));
    CHECK(board.newProblem().startsWith(QLatin1String("Use at least 15 letters.")));
    board.change(passphrase, other, passphrase);
    CHECK(board.repeatProblem() == QLatin1String("These two are not the same."));
    CHECK(board.outcome().isEmpty());

    board.change(passphrase, other, other);
    CHECK(board.outcome().startsWith(QLatin1String("Done.")));
    program->lock();
    program->locking()->unlock(passphrase);
    CHECK_FALSE(program->home().isOpen());
    program->locking()->unlock(other);
    CHECK(program->page() == Page::today);
}

TEST_CASE("a recovery code is shown once, opens the diary with a new passphrase, and only the newest does", "[diary][keys]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& keys = *program->keys();
    program->openKeys();
    CHECK(keys.codeState() == QLatin1String("You have no recovery code yet."));
    CHECK_FALSE(program->locking()->isCodeOffered());

    keys.makeCode(QStringLiteral("a wrong guess at it"));
    CHECK(keys.code().isEmpty());
    CHECK_FALSE(keys.codeProblem().isEmpty());
    keys.makeCode(passphrase);
    const QString first = keys.code();
    CHECK(first.size() == 36 + 8);
    keys.hideCode();
    CHECK(keys.code().isEmpty());
    keys.makeCode(passphrase);
    const QString code = keys.code();
    CHECK(code != first);
    program->back();
    CHECK(program->page() == Page::settings);
    CHECK(keys.code().isEmpty());

    program->lock();
    auto& lock = *program->locking();
    REQUIRE(lock.isCodeOffered());
    lock.useCode(true);
    lock.recover(QStringLiteral("ABCD"), other, other);
    CHECK(lock.codeProblem().startsWith(QLatin1String("This is not a recovery code.")));
    lock.recover(first, other, other);
    CHECK(lock.codeProblem() == QLatin1String("This code does not open the diary. Only the newest one does."));
    lock.recover(code, QStringLiteral("short"), QStringLiteral("short"));
    CHECK(lock.problem().startsWith(QLatin1String("Use at least 15 letters.")));
    CHECK_FALSE(program->home().isOpen());

    lock.recover(code.toLower().replace(QLatin1Char('-'), QLatin1Char(' ')), other, other);
    CHECK(program->page() == Page::today);
    program->lock();
    CHECK_FALSE(lock.isRecovering());
    lock.unlock(other);
    CHECK(program->home().isOpen());
}

TEST_CASE("a diary that was locked shows neither code nor problem of before", "[diary][keys]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openKeys();
    program->keys()->makeCode(passphrase);
    REQUIRE_FALSE(program->keys()->code().isEmpty());
    program->lock();
    CHECK(program->keys()->code().isEmpty());
    program->openKeys();
    CHECK(program->page() == Page::lock);
}
