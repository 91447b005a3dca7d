// One's own data: taken along whole, and deleted for good.
#include "app/diary/model/times.h"
#include "core/clock/iso8601.h"
#include "core/exchange/fhir_bundle.h"
#include "core/exchange/tables.h"
#include "tests/screens/demo_patient.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QUrl>

#include <set>

using namespace ebbline;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

const QString passphrase = QString::fromLatin1(DemoPatient::passphrase);

QString textOf(const QString& path)
{
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return QString::fromUtf8(file.readAll());
}

}  // namespace

TEST_CASE("all that was written can be taken along, without a network", "[diary][mine]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    DemoPatient::tell(*program, 4);
    program->amend(program->history()->entries().first().key);
    program->entry()->answer(1, 6);
    program->entry()->writeTemperature(QStringLiteral("37.2"));
    program->entry()->writeNote(QStringLiteral("=Left side, \"tight\""));
    program->entry()->save();
    program->history()->writeNote(QStringLiteral("Is this usual?"));
    QTemporaryDir folder;
    REQUIRE(program->mine()->allowTaking(passphrase));
    program->mine()->takeAlong(QUrl::fromLocalFile(folder.path()));

    const QDir made(folder.filePath(QStringLiteral("diary-2027-03-01")));
    REQUIRE(program->mine()->outcome().contains(QLatin1String("diary-2027-03-01")));
    CHECK(made.entryList(QDir::Files) == QStringList{"diary.fhir.json", "diary.pdf", "entries.csv", "notes.csv", "photos.csv", "reminders.csv", "scores.csv", "signs.csv", "temperatures.csv", "versions.csv"});
    const auto scores = exchange::readScores(textOf(made.filePath(QStringLiteral("scores.csv"))).toStdString());
    REQUIRE(scores);
    CHECK(scores->size() == 10);
    CHECK(std::any_of(scores->begin(), scores->end(), [](const auto& row) { return row.score.points() == 6; }));
    const auto signs = exchange::readSigns(textOf(made.filePath(QStringLiteral("signs.csv"))).toStdString());
    REQUIRE(signs);
    CHECK(signs->size() == recovery::allSigns.size());
    const auto temperatures = exchange::readTemperatures(textOf(made.filePath(QStringLiteral("temperatures.csv"))).toStdString());
    REQUIRE(temperatures);
    REQUIRE(temperatures->size() == 1);
    CHECK(temperatures->front().temperature.celsius() == 37.2);
    const QString entries = textOf(made.filePath(QStringLiteral("entries.csv")));
    CHECK(entries.count(QLatin1String("\r\n")) == 3);
    CHECK(entries.contains(QLatin1String("replaced")));
    CHECK(entries.contains(QLatin1String("\"'=Left side, \"\"tight\"\"\"")));
    CHECK(textOf(made.filePath(QStringLiteral("notes.csv"))).contains(QLatin1String("me,")));
    CHECK(textOf(made.filePath(QStringLiteral("versions.csv"))).count(QLatin1String("\r\n")) == 21);
    QFile pdf(made.filePath(QStringLiteral("diary.pdf")));
    REQUIRE(pdf.open(QIODevice::ReadOnly));
    CHECK(pdf.read(5) == "%PDF-");
    const auto bundle = exchange::readBundle(textOf(made.filePath(QStringLiteral("diary.fhir.json"))).toStdString());
    REQUIRE(bundle);
    REQUIRE(bundle->entries.size() == 1);
    CHECK(bundle->entries.front().note == "=Left side, \"tight\"");
    CHECK(bundle->messages.size() == 1);
    CHECK_FALSE(bundle->treatment);  // what was placed where is the clinic's record
    const QString page = diaryapp::recordHtml(program->home().diary(), false);
    CHECK(page.contains(QLatin1String("Swelling: right 4, left 6")));
    CHECK(page.contains(QLatin1String("Swelling: right 4, left 4")));
    CHECK(page.contains(QLatin1String("Before it was corrected:")));
    CHECK(page.contains(QLatin1String("&quot;tight&quot;")));
    // Who reads it years later or elsewhere finds year and zone at every time.
    const QString zone = QString::fromStdString(clock::offsetText(program->home().now()));
    const QString treated = diaryapp::stampText(program->home().diary().course().treated);
    CHECK(treated.contains(QLatin1String("2027")));
    CHECK(page.contains(QStringLiteral("Treatment: ") + treated));
    CHECK(page.count(QLatin1String(" 2027, ")) == page.count(zone));
    CHECK(page.count(zone) == 4);  // treated, made, one entry, one note
}

TEST_CASE("a place that cannot be written to is said, and nothing is claimed", "[diary][mine]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    REQUIRE(program->mine()->allowTaking(passphrase));
    program->mine()->takeAlong(QUrl::fromLocalFile(QStringLiteral("/proc/nowhere")));
    CHECK(program->mine()->outcome() == QLatin1String("It could not be written there. Choose another place."));
}

TEST_CASE("all of it goes into a folder whose address is no path, where the system lets it; else that is said", "[diary][mine]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 4);
    QTemporaryDir folder;
    const QString before = QDir::currentPath();
    REQUIRE(QDir::setCurrent(folder.path()));
    const auto outcome = [&] {
        const bool hers = program->mine()->allowTaking(passphrase);
        program->mine()->takeAlong(QUrl(QStringLiteral("content://tree")));
        return hers ? program->mine()->outcome() : QStringLiteral("not hers");
    };
    QFile blocked(QStringLiteral("content:"));
    REQUIRE(blocked.open(QIODevice::WriteOnly));  // nothing can be made behind such an address
    const QString refused = outcome();
    REQUIRE(blocked.remove());
    REQUIRE(QDir().mkpath(QStringLiteral("content:/tree")));
    const QString taken = outcome();
    REQUIRE(QDir::setCurrent(before));

    CHECK(refused == QLatin1String("It could not be written there. Choose another place."));
    CHECK(taken.startsWith(QLatin1String("Done.")));
    const QDir made(folder.filePath(QStringLiteral("content:/tree/diary-2027-03-01")));
    CHECK(made.entryList(QDir::Files).size() == 10);
    CHECK(textOf(made.filePath(QStringLiteral("scores.csv"))).count(QLatin1String("\r\n")) == 11);
    CHECK(textOf(made.filePath(QStringLiteral("diary.pdf"))).startsWith(QLatin1String("%PDF-")));
}

TEST_CASE("two entries about the same moment make tables that are read again", "[diary][mine]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    DemoPatient::tell(*program, 3);
    DemoPatient::tell(*program, 5);
    const auto& entries = program->home().diary().history();
    REQUIRE(entries.size() == 2);
    REQUIRE(entries[0].history.current().at.at == entries[1].history.current().at.at);

    const auto tables = program->home().diary().tables();

    const auto scores = exchange::readScores(tables.at("scores.csv"));
    REQUIRE(scores);
    REQUIRE(scores->size() == 20);
    // Written at one instant of the test's clock: which stands first is left to their names.
    CHECK(std::set{scores->front().score.points(), scores->back().score.points()} == std::set{3, 5});
    CHECK(scores->back().enteredAt.at - scores->front().enteredAt.at == std::chrono::milliseconds(1));
    CHECK(exchange::readSigns(tables.at("signs.csv")));
}

TEST_CASE("deleting says what would be lost, asks again, and leaves nothing that opens", "[diary][mine]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->reminders()->allow(true);
    patient.setOffline(true);
    DemoPatient::tell(*program, 4);
    program->openMine();
    auto& mine = *program->mine();
    CHECK(mine.loss() == QLatin1String("1 entry is only on this phone and would be lost."));
    REQUIRE(program->history()->writeNote(QStringLiteral("May I wash my hair?")));
    CHECK(mine.loss() == QLatin1String("1 entry is only on this phone and would be lost. A note or an answer that still waits on this phone would be lost too."));

    mine.deleteAll(passphrase);  // not asked yet
    CHECK(program->home().isOpen());
    mine.askDelete();
    mine.keepAll();
    mine.deleteAll(passphrase);
    CHECK(program->home().isOpen());

    mine.askDelete();
    mine.deleteAll(passphrase);
    CHECK_FALSE(program->home().isOpen());
    CHECK_FALSE(program->home().exists());
    CHECK(program->page() == Page::lock);
    CHECK(program->locking()->isFresh());
    CHECK(patient.bells().booked.empty());
    CHECK_FALSE(std::filesystem::exists(patient.folder()));
    CHECK(QFile(QString::fromStdString(patient.folder().string() + ".ini")).size() == 0);
}

TEST_CASE("all that has arrived is said to be with the clinic before it is deleted", "[diary][mine]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 4);
    patient.sends();
    program->syncNow();
    program->openMine();
    CHECK(program->mine()->loss() == QLatin1String("All your entries are on the clinic's computer too."));
}

TEST_CASE("a note that still waits is said before the diary is deleted, until it has arrived", "[diary][mine]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 4);
    patient.sends();
    program->syncNow();
    patient.setOffline(true);
    REQUIRE(program->history()->writeNote(QStringLiteral("May I wash my hair?")));
    program->openMine();
    CHECK(program->mine()->loss()
          == QLatin1String("All your entries are on the clinic's computer too. Something else that you wrote still waits on this phone and would be lost."));

    patient.setOffline(false);
    program->syncNow();
    patient.sends();
    program->syncNow();
    CHECK(program->mine()->loss() == QLatin1String("All your entries are on the clinic's computer too."));
}

TEST_CASE("what would be lost is said also after the link with the clinic has ended", "[diary][mine]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 4);
    program->syncNow();
    patient.sends();
    program->syncNow();
    const auto other = patient.joinedOnAnotherPhone(QStringLiteral("en"));
    patient.sends();
    patient.setOffline(true);
    DemoPatient::tell(*program, 5);  // not known yet: another phone is in its place
    patient.setOffline(false);
    program->syncNow();
    REQUIRE(program->home().diary().replaced());
    program->openMine();
    program->mine()->askDelete();
    CHECK(program->mine()->isConfirming());
    CHECK(program->mine()->loss() == QLatin1String("1 entry is only on this phone and would be lost."));
}

TEST_CASE("where one file cannot be written, nothing of the diary is left in the folder", "[diary][mine][security]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 4);
    QTemporaryDir folder;
    // A folder stands where a table should go.
    REQUIRE(QDir(folder.path()).mkpath(QStringLiteral("diary-2027-03-01/signs.csv")));
    REQUIRE(program->mine()->allowTaking(passphrase));
    program->mine()->takeAlong(QUrl::fromLocalFile(folder.path()));

    CHECK(program->mine()->outcome() == QLatin1String("It could not be written there. Choose another place."));
    const QDir made(folder.filePath(QStringLiteral("diary-2027-03-01")));
    CHECK(made.entryList(QDir::Files) == QStringList{});
    CHECK(made.entryList(QDir::Dirs | QDir::NoDotAndDotDot) == QStringList{QStringLiteral("signs.csv")});
}

TEST_CASE("all of a diary is taken along or deleted only by who knows its passphrase", "[diary][mine][security]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 4);
    program->openMine();
    auto& mine = *program->mine();
    QTemporaryDir folder;
    const auto url = QUrl::fromLocalFile(folder.path());
    const auto taken = [&] { return !QDir(folder.path()).isEmpty(); };

    mine.takeAlong(url);  // nobody was asked
    CHECK_FALSE(taken());
    CHECK(mine.takeProblem() == QLatin1String("Type your passphrase once more."));
    CHECK_FALSE(mine.allowTaking({}));
    CHECK(mine.takeProblem() == QLatin1String("Type your passphrase first."));
    CHECK_FALSE(mine.allowTaking(QStringLiteral("three calm swans wade")));
    CHECK(mine.takeProblem() == QLatin1String("That is not your passphrase. Nothing was saved or deleted."));
    mine.takeAlong(url);
    CHECK_FALSE(taken());

    // It holds for one taking along, for two minutes, and not over a lock.
    REQUIRE(mine.allowTaking(passphrase));
    patient.clock().advance(diaryapp::MineBoard::stepHolds + std::chrono::seconds(1));
    mine.takeAlong(url);
    CHECK_FALSE(taken());
    REQUIRE(mine.allowTaking(passphrase));
    program->lock();
    program->locking()->unlock(passphrase);
    mine.takeAlong(url);
    CHECK_FALSE(taken());
    REQUIRE(mine.allowTaking(passphrase));
    mine.takeAlong(url);
    CHECK(taken());
    REQUIRE(QDir(folder.path()).removeRecursively());
    mine.takeAlong(url);
    CHECK_FALSE(taken());

    mine.askDelete();
    mine.deleteAll({});
    CHECK(mine.eraseProblem() == QLatin1String("Type your passphrase first."));
    mine.deleteAll(QStringLiteral("three calm swans wade"));
    CHECK(mine.eraseProblem() == QLatin1String("That is not your passphrase. Nothing was saved or deleted."));
    CHECK(program->home().isOpen());
    CHECK(program->home().exists());
    CHECK(program->home().diary().history().size() == 1);
}

TEST_CASE("guesses at taking along or deleting count as guesses at the lock", "[diary][mine][security]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openMine();
    auto& mine = *program->mine();
    mine.askDelete();
    for (int guess = 0; guess < 3; ++guess)
        mine.allowTaking(QStringLiteral("a guess, number %1").arg(guess));
    for (int guess = 0; guess < 10 && !mine.eraseProblem().startsWith(QLatin1String("Too many tries.")); ++guess)
        mine.deleteAll(QStringLiteral("another guess, number %1").arg(guess));
    REQUIRE(mine.eraseProblem().startsWith(QLatin1String("Too many tries. Please wait ")));

    mine.deleteAll(passphrase);
    CHECK(program->home().isOpen());
    CHECK_FALSE(mine.allowTaking(passphrase));
    program->lock();
    program->locking()->unlock(passphrase);
    CHECK_FALSE(program->home().isOpen());
    patient.clock().advance(std::chrono::hours(24));
    program->locking()->unlock(passphrase);
    REQUIRE(program->home().isOpen());
    CHECK(mine.allowTaking(passphrase));
}

TEST_CASE("who is treated again reads the way there beside her data, and who has not joined does not", "[diary][mine]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    REQUIRE(program->show(QSize(390, 844)));
    program->openMine();
    screens::settle(*program->window());
    const auto again = QStringLiteral("Treated again? This diary holds one treatment. Save your data, delete the diary, then join again.");
    CHECK(program->mine()->again() == again);
    CHECK(screens::spoken(*program->window(), again) != nullptr);

    DemoPatient other;
    auto fresh = other.program(QStringLiteral("en"));
    CHECK(fresh->mine()->again().isEmpty());
    REQUIRE(fresh->home().create(bytes::viewOf(DemoPatient::passphrase)));
    CHECK(fresh->mine()->again().isEmpty());
}

TEST_CASE("files of others in the folder stay when the diary is deleted", "[diary][mine]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    std::filesystem::create_directories(patient.folder());
    const QString foreign = QString::fromStdString((patient.folder() / "holiday.txt").string());
    QFile file(foreign);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("not yours");
    file.close();
    program->mine()->askDelete();
    program->mine()->deleteAll(passphrase);
    CHECK(QFile::exists(foreign));
    CHECK(QDir(QString::fromStdString(patient.folder().string())).entryList(QDir::Files).size() == 1);
}
