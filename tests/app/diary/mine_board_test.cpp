// One's own data: taken along whole, and deleted for good.
#include "core/exchange/fhir_bundle.h"
#include "core/exchange/tables.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QUrl>

using namespace ebbline;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

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
    program->entry()->writeNote(QStringLiteral("=Left side, \"tight\""));
    program->entry()->save();
    program->history()->writeNote(QStringLiteral("Is this usual?"));
    QTemporaryDir folder;
    program->mine()->takeAlong(QUrl::fromLocalFile(folder.path()));

    const QDir made(folder.filePath(QStringLiteral("diary-2027-03-01")));
    REQUIRE(program->mine()->outcome().contains(QLatin1String("diary-2027-03-01")));
    CHECK(made.entryList(QDir::Files) == QStringList{"diary.fhir.json", "diary.pdf", "entries.csv", "notes.csv", "photos.csv", "reminders.csv", "scores.csv", "signs.csv", "versions.csv"});
    const auto scores = exchange::readScores(textOf(made.filePath(QStringLiteral("scores.csv"))).toStdString());
    REQUIRE(scores);
    CHECK(scores->size() == 10);
    CHECK(std::any_of(scores->begin(), scores->end(), [](const auto& row) { return row.score.points() == 6; }));
    const auto signs = exchange::readSigns(textOf(made.filePath(QStringLiteral("signs.csv"))).toStdString());
    REQUIRE(signs);
    CHECK(signs->size() == recovery::allSigns.size());
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
}

TEST_CASE("a place that cannot be written to is said, and nothing is claimed", "[diary][mine]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->mine()->takeAlong(QUrl::fromLocalFile(QStringLiteral("/proc/nowhere")));
    CHECK(program->mine()->outcome() == QLatin1String("It could not be written there. Choose another place."));
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

    mine.deleteAll();  // not asked yet
    CHECK(program->home().isOpen());
    mine.askDelete();
    mine.keepAll();
    mine.deleteAll();
    CHECK(program->home().isOpen());

    mine.askDelete();
    mine.deleteAll();
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
    program->mine()->deleteAll();
    CHECK(QFile::exists(foreign));
    CHECK(QDir(QString::fromStdString(patient.folder().string())).entryList(QDir::Files).size() == 1);
}
