// Backup, check and a new passphrase, as somebody at the desk asks for them.
#include "core/desk/traces.h"
#include "core/vault/backup.h"
#include "tests/app/desk/keeping.h"
#include "tests/app/held_measure.h"
#include "tests/core/desk/clinic_world.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>

#include <QCoreApplication>
#include <QFile>

#include <algorithm>
#include <thread>

using namespace ebbline;
using screens::Keeping;

TEST_CASE("a backup is announced once it was opened and compared, and gives the same desk back", "[desk][keep]")
{
    Keeping at;
    const auto file = at.elsewhere.filePath(QStringLiteral("desk.ebbline"));
    at.board().backUpTo(at.words, file);
    at.wait();
    CHECK(at.board().problem().toStdString() == "");
    CHECK(at.board().outcome().contains(QLatin1String("opened again")));
    const auto courses = at.program->workplace().desk().courses().size();
    const std::filesystem::path back(at.elsewhere.filePath(QStringLiteral("back")).toStdString());
    REQUIRE(vault::restore(file.toStdString(), vault::Offered::passphrase(bytes::viewOf(screens::DemoClinic::passphrase)),
                           at.clinic.clock().readings(), back));
    auto again = desk::Desk::unlock(back, bytes::viewOf(screens::DemoClinic::passphrase), at.clinic.clock(), at.clinic.zone());
    REQUIRE(again);
    CHECK(again->courses().size() == courses);

    at.board().backUpTo(at.words, file);
    at.wait();
    CHECK(at.board().problem().contains(QLatin1String("never written over")));
}

TEST_CASE("a backup, a new passphrase and a recovery code leave a line with who did it; what failed leaves none", "[desk][keep][traces]")
{
    Keeping at;
    const auto lines = [&] {
        std::vector<std::pair<records::Step, std::string>> found;
        const auto& vault = at.program->workplace().desk().vault();
        for (const auto& trace : desk::traces(vault.state(), vault.operations()))
            if (trace.step)
                found.emplace_back(*trace.step, trace.by);
        return found;
    };
    const auto known = lines().size();
    const std::string me = at.program->workplace().desk().person();
    at.board().makeCode(QStringLiteral("not the passphrase"));
    at.wait();
    CHECK(lines().size() == known);
    at.clinic.clock().advance(std::chrono::minutes(1));

    at.board().backUpTo(at.words, at.elsewhere.filePath(QStringLiteral("desk.ebbline")));
    at.wait();
    at.board().makeCode(at.words);
    at.wait();
    const auto code = at.board().code();
    const auto fresh = QStringLiteral("lanterns over the harbour");
    at.board().changePassphrase(at.words, fresh, fresh);
    at.wait();
    const auto after = lines();
    REQUIRE(after.size() == known + 3);
    CHECK(after[0] == std::pair(records::Step::passphraseChanged, me));
    CHECK(after[1] == std::pair(records::Step::recoveryCodeMade, me));
    CHECK(after[2] == std::pair(records::Step::backupMade, me));

    at.program->lock();
    REQUIRE(at.program->unlocking()->recover(code, at.words, at.words));
    CHECK(lines().front() == std::pair(records::Step::passphraseChanged, std::string()));  // nobody is named at the door
}

TEST_CASE("the line of a backup bears who began it, whoever is named when it ends", "[desk][keep][traces]")
{
    Keeping at;
    const auto backups = [&] {
        std::vector<std::string> by;
        const auto& vault = at.program->workplace().desk().vault();
        for (const auto& trace : desk::traces(vault.state(), vault.operations())) {
            if (trace.step == records::Step::backupMade) {
                by.push_back(trace.by);
            }
        }
        return by;
    };
    const auto known = backups().size();
    at.board().backUpTo(at.words, at.elsewhere.filePath(QStringLiteral("desk.ebbline")));
    at.program->workplace().desk().setPerson("Ilan Osei");
    at.wait();
    REQUIRE(backups().size() == known + 1);
    CHECK(backups().front() == "Dr Mara Lindqvist");
}

TEST_CASE("the line of a backup is not lost if the desk locks meanwhile: it is written when the desk opens, with its own time", "[desk][keep][traces]")
{
    Keeping at;
    const auto backups = [&] {
        std::vector<desk::Trace> found;
        const auto& vault = at.program->workplace().desk().vault();
        for (const auto& trace : desk::traces(vault.state(), vault.operations()))
            if (trace.step == records::Step::backupMade)
                found.push_back(trace);
        return found;
    };
    const auto known = backups().size();
    bool ended = false;
    QObject::connect(&at.board(), &deskapp::KeepBoard::ended, [&ended] { ended = true; });
    at.board().backUpTo(at.words, at.elsewhere.filePath(QStringLiteral("desk.ebbline")));
    at.program->lock();
    CHECK_FALSE(at.board().isBusy());
    REQUIRE(tests::HeldMeasure::waitFor([&] { return ended; }));
    REQUIRE(QFile::exists(at.elsewhere.filePath(QStringLiteral("desk.ebbline"))));
    const auto done = at.clinic.clock().now();
    at.clinic.clock().advance(std::chrono::hours(2));

    // Invented patients have no such line.
    REQUIRE(at.program->unlocking()->openDemo());
    QCoreApplication::processEvents();
    CHECK(backups().empty());
    at.program->lock();

    REQUIRE(at.program->unlocking()->unlock(at.words));
    REQUIRE(tests::HeldMeasure::waitFor([&] { return backups().size() == known + 1; }));
    CHECK(backups().front().by == "Dr Mara Lindqvist");
    const auto operations = at.program->workplace().desk().vault().operations();
    const auto written = std::ranges::find(operations, backups().front().id, &journal::Operation::id);
    REQUIRE(written != operations.end());
    const auto line = records::decode(records::Kind::stepTaken, written->body);
    REQUIRE(line);
    CHECK(std::get<records::StepTaken>(*line).at.at == done);
    at.program->lock();
    REQUIRE(at.program->unlocking()->unlock(at.words));
    QCoreApplication::processEvents();
    CHECK(backups().size() == known + 1);  // once
}

TEST_CASE("the line of a backup is written too if the program ends while it is made", "[desk][keep][traces]")
{
    Keeping at;
    const auto backups = [&] {
        const auto& vault = at.program->workplace().desk().vault();
        const auto found = desk::traces(vault.state(), vault.operations());
        return std::ranges::count_if(found, [](const desk::Trace& trace) { return trace.step == records::Step::backupMade; });
    };
    const auto known = backups();
    bool ended = false;
    QObject::connect(&at.board(), &deskapp::KeepBoard::ended, [&ended] { ended = true; });
    at.board().backUpTo(at.words, at.elsewhere.filePath(QStringLiteral("desk.ebbline")));
    // It has begun, and is not called off with the program.
    std::this_thread::sleep_for(std::chrono::milliseconds(300));
    at.program.reset();
    CHECK_FALSE(ended);
    REQUIRE(QFile::exists(at.elsewhere.filePath(QStringLiteral("desk.ebbline"))));
    at.program = at.clinic.program(QStringLiteral("en"));
    CHECK(backups() == known + 1);
}

TEST_CASE("a backup goes on while another page is looked at, and how it ended stands there when one comes back", "[desk][keep]")
{
    Keeping at;
    at.board().backUpTo(at.words, at.elsewhere.filePath(QStringLiteral("desk.ebbline")));
    at.program->openQueue();
    CHECK(at.board().isBusy());  // so that the desk does not lock over it by itself, and no second one begins
    at.wait();
    at.program->openKeep();
    CHECK(at.board().outcome().contains(QLatin1String("opened again")));
    at.program->openQueue();
    at.program->openKeep();
    CHECK(at.board().outcome().isEmpty());
}

TEST_CASE("a check says that all is whole, and which fault it found in a damaged vault", "[desk][keep]")
{
    Keeping at;
    at.board().check(at.words);
    at.wait();
    CHECK(at.board().outcome().contains(QLatin1String("Whole")));
    CHECK(at.board().problem().toStdString() == "");

    const auto keys = at.clinic.folder() / "vault.keys.previous";
    QFile before(QString::fromStdString(keys.string()));
    REQUIRE(before.exists());
    REQUIRE(before.open(QIODevice::ReadWrite));
    REQUIRE(before.seek(before.size() / 2));
    before.write("damage");
    before.close();
    at.board().check(at.words);
    at.wait();
    CHECK(at.board().problem().contains(QLatin1String("fault")));
}

TEST_CASE("a new passphrase is asked for twice, and the old one opens nothing afterwards", "[desk][keep]")
{
    Keeping at;
    const auto fresh = QStringLiteral("lanterns over the harbour");
    at.board().changePassphrase(at.words, QStringLiteral("short"), QStringLiteral("short"));
    CHECK_FALSE(at.board().isBusy());
    CHECK(at.board().problem().contains(QLatin1String("too short")));
    at.board().changePassphrase(at.words, fresh, QStringLiteral("lanterns over the harbor"));
    CHECK(at.board().problem().contains(QLatin1String("not the same")));

    at.board().changePassphrase(at.words, fresh, fresh);
    at.wait();
    CHECK(at.board().problem().toStdString() == "");
    CHECK_FALSE(at.opens(at.words));
    at.clinic.clock().advance(std::chrono::minutes(1));
    CHECK(at.opens(fresh));
}

TEST_CASE("nothing of it works on the invented clinic", "[desk][keep]")
{
    screens::DemoClinic clinic;
    auto program = clinic.freshProgram(QStringLiteral("en"));
    REQUIRE(program->workplace().openDemo());
    program->openKeep();
    CHECK(program->page() != app::DeskProgram::Page::keep);
    program->keep()->makeCode(QStringLiteral("anything at all"));
    CHECK_FALSE(program->keep()->isBusy());
}

TEST_CASE("a backup older than seven days is said on every page but its own, until another one is made", "[desk][keep]")
{
    Keeping at;
    REQUIRE(at.program->show(QSize(1280, 900)));
    at.program->openQueue();
    screens::settle(*at.program->window());
    CHECK(at.board().lastBackup().startsWith(QStringLiteral("Last backup of this desk: ")));
    CHECK(at.board().lastBackup().endsWith(QStringLiteral("22 March 2027.")));
    CHECK(at.board().overdue().isEmpty());
    CHECK(screens::named(*at.program->window(), QStringLiteral("Backup and keys")) == nullptr);

    at.clinic.clock().advance(std::chrono::hours(7 * 24) + std::chrono::minutes(1));
    at.program->workplace().settle({});
    screens::settle(*at.program->window());
    const auto overdue = at.board().overdue();
    CHECK(overdue.startsWith(QStringLiteral("No backup of this desk since ")));
    CHECK(overdue.endsWith(QStringLiteral("22 March 2027.")));
    const auto why = at.board().overdueWhy();
    CHECK(why.startsWith(QStringLiteral("If this computer fails, what was written here since may be lost.")));
    CHECK(screens::spoken(*at.program->window(), why) == nullptr);
    CHECK(screens::spoken(*at.program->window(), overdue) != nullptr);
    REQUIRE(screens::press(*at.program->window(), QStringLiteral("Backup and keys")));
    screens::settle(*at.program->window());
    CHECK(at.program->page() == app::DeskProgram::Page::keep);
    CHECK(screens::spoken(*at.program->window(), overdue) == nullptr);
    CHECK(screens::spoken(*at.program->window(), at.board().lastBackup()) != nullptr);
    CHECK(screens::spoken(*at.program->window(), why) != nullptr);

    at.board().backUpTo(at.words, at.elsewhere.filePath(QStringLiteral("desk.ebbline")));
    at.wait();
    CHECK(at.board().overdue().isEmpty());
    CHECK(at.board().overdueWhy().isEmpty());
    CHECK(at.board().lastBackup().endsWith(QStringLiteral("29 March 2027.")));
}

TEST_CASE("a desk that never made a backup says so once there is a treatment, and an empty or invented one does not", "[desk][keep]")
{
    screens::DemoClinic clinic;
    auto program = clinic.freshProgram(QStringLiteral("en"));
    REQUIRE(program->workplace().create(bytes::viewOf(screens::DemoClinic::passphrase), crypto::StretchCost{1, 8 * 1024}));
    auto& desk = program->workplace().desk();
    desk.setPerson("Dr Mara Lindqvist");
    CHECK(program->keep()->overdue().isEmpty());
    CHECK(program->keep()->lastBackup() == QStringLiteral("No backup of this desk was made yet."));
    const auto patient = desk.registerPatient("Ines Varga", "+00 555 0101", "en");
    REQUIRE(patient);
    auto treatment = desk.blankTreatment(*patient);
    treatment.placements = test::sampleTreatment().placements;
    treatment.weightKg = 62;
    REQUIRE(desk.recordTreatment(treatment));
    CHECK(program->keep()->overdue() == QStringLiteral("No backup of this desk was made yet."));
    CHECK(program->keep()->overdueWhy().startsWith(QStringLiteral("If this computer fails, what is written here may be lost.")));
    program->lock();
    CHECK(program->keep()->overdue().isEmpty());
    REQUIRE(program->workplace().openDemo());
    CHECK(program->keep()->overdue().isEmpty());
}
