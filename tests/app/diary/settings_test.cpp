// How the diary looks, speaks and locks: kept at once, whatever stands in the file.
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>

#include <QFile>
#include <QSettings>
#include <QTemporaryDir>
#include <QUrl>

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
    keys.askBack();
    keys.readBack(first);
    CHECK(keys.code().isEmpty());
    keys.makeCode(passphrase);
    const QString code = keys.code();
    CHECK(code != first);
    program->back();
    CHECK(program->page() == Page::settings);
    CHECK(keys.code().isEmpty());
    CHECK(program->notice() == QLatin1String("The code is not shown any more. If it is not on your paper, make a new one."));

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

TEST_CASE("a recovery code goes only once a group of it was read back from the paper, and can be shown again until then", "[diary][keys]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& keys = *program->keys();
    program->openKeys();
    keys.askBack();  // nothing to ask for
    CHECK_FALSE(keys.isAsking());
    keys.makeCode(passphrase);
    const QString code = keys.code();
    const auto group = [&] { return code.section(QLatin1Char('-'), keys.askedGroup() - 1, keys.askedGroup() - 1); };
    keys.readBack(code);  // not asked yet
    REQUIRE(keys.code() == code);

    keys.askBack();
    REQUIRE(keys.isAsking());
    CHECK(keys.askedText() == QStringLiteral("From your paper: group %1 of 9").arg(keys.askedGroup()));
    for (const QString& wrong : {QString(), QStringLiteral("2222"), group().chopped(1)}) {
        keys.readBack(wrong);
        CHECK(keys.isAsking());
        CHECK(keys.askedProblem().startsWith(QLatin1String("That is not this group.")));
        CHECK(keys.code() == code);
    }
    keys.showCode();
    CHECK_FALSE(keys.isAsking());
    CHECK(keys.code() == code);
    CHECK(keys.askedProblem().isEmpty());
    keys.askBack();
    keys.readBack(group().toLower());
    CHECK_FALSE(keys.isAsking());
    CHECK(keys.code().isEmpty());
    CHECK(keys.outcome() == QLatin1String("Good. Keep the paper where only you find it."));
    program->back();
    CHECK(program->notice().isEmpty());
    program->openKeys();

    // Whoever leaves while it is asked for loses nothing: the passphrase opens, and so does the paper, if it was right.
    keys.makeCode(passphrase);
    const QString newest = keys.code();
    keys.askBack();
    program->lock();
    CHECK(keys.code().isEmpty());
    CHECK_FALSE(keys.isAsking());
    program->locking()->unlock(passphrase);
    REQUIRE(program->home().isOpen());
    program->lock();
    program->locking()->useCode(true);
    program->locking()->recover(newest, other, other);
    CHECK(program->home().isOpen());
}

TEST_CASE("a page with the recovery code can be saved to print, and says to delete the file", "[diary][keys]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& keys = *program->keys();
    program->openKeys();
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("code.pdf"));
    keys.savePage(QUrl::fromLocalFile(file));
    CHECK_FALSE(QFile::exists(file));  // there is none to write down
    keys.makeCode(passphrase);
    keys.savePage(QUrl::fromLocalFile(folder.filePath(QStringLiteral("no/such/code.pdf"))));
    CHECK(keys.pageOutcome() == QLatin1String("The file could not be written there. Choose another place."));
    keys.savePage(QUrl::fromLocalFile(file));
    CHECK(keys.pageOutcome() == QLatin1String("Done. Print the page, then delete the file: whoever finds it can open your diary."));
    QFile page(file);
    REQUIRE(page.open(QIODevice::ReadOnly));
    CHECK(page.readAll().startsWith("%PDF-"));
    CHECK_FALSE(keys.code().isEmpty());  // still to be read back
    keys.askBack();
    CHECK(keys.pageOutcome().isEmpty());
    program->lock();
    CHECK(keys.pageOutcome().isEmpty());
}

TEST_CASE("a recovery code does not stay on its page, whatever leads away from it, and that is said", "[diary][keys]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openKeys();
    program->keys()->makeCode(passphrase);
    REQUIRE_FALSE(program->keys()->code().isEmpty());
    program->openCall();
    REQUIRE(program->page() == Page::call);
    CHECK(program->keys()->code().isEmpty());
    program->back();
    CHECK(program->notice().contains(QLatin1String("The code is not shown any more.")));

    program->dismissNotice();
    program->openKeys();
    program->openSettings();
    CHECK(program->notice().isEmpty());  // there was none
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
