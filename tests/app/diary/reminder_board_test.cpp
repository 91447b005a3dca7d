// Reminders on the device: booked from what the diary knows, quiet, put off, and never the only copy.
#include "app/diary/model/words.h"
#include "tests/core/exchange/strict_calendar.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QUrl>

using namespace ebbline;
using namespace std::chrono_literals;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

TEST_CASE("nothing is booked before the person says so, and the day shows that nothing rings", "[diary][bells]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->reminders();
    CHECK(board.isAsking());
    CHECK(board.silence() == QLatin1String("Reminders do not ring yet. What is due stands here."));
    CHECK(patient.bells().booked.empty());

    board.allow(false);
    CHECK(board.silence() == QLatin1String("Reminders do not ring. What is due stands here."));
    CHECK_FALSE(board.isAsking());
    patient.goTo(0, 19, 40);
    program->openToday();
    CHECK_FALSE(program->today()->due().isEmpty());  // the list is the truth

    board.allow(true);
    CHECK(board.silence().isEmpty());
    CHECK(board.state().startsWith(QLatin1String("Reminders ring. Next: today ")));
    CHECK_FALSE(patient.bells().booked.empty());
    CHECK(patient.bells().booked.size() <= aftercare::mostBooked);
}

TEST_CASE("what the person said holds the next time, also while the diary is locked", "[diary][bells]")
{
    DemoPatient patient;
    patient.joined(QStringLiteral("en"))->reminders()->allow(true);
    const auto booked = patient.bells().booked;
    REQUIRE_FALSE(booked.empty());
    patient.bells().allowed.reset();

    auto again = patient.program(QStringLiteral("en"));
    CHECK(again->page() == Page::lock);
    CHECK(again->reminders()->isRinging());
    CHECK(patient.bells().booked == booked);
}

TEST_CASE("a device without a bell says so, and asks for nothing", "[diary][bells]")
{
    DemoPatient patient;
    patient.bells().there = false;
    auto program = patient.joined(QStringLiteral("en"));
    CHECK_FALSE(program->reminders()->isAsking());
    CHECK(program->reminders()->silence() == QLatin1String("This device can not ring. What is due stands here."));
}

TEST_CASE("nothing that rings or waits to ring says a word about health", "[diary][bells][privacy]")
{
    const auto language = GENERATE("en", "de", "ar", "es", "fr", "pt_BR", "tr", "zh_CN");
    CAPTURE(language);
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    program->reminders()->allow(true);
    const auto& said = patient.bells().said;
    const QString all = QStringList{said.name, said.title, said.text, said.asksToOpen, said.open, said.later}.join(QLatin1Char(' '));
    for (const QString& word : {said.name, said.title, said.text, said.asksToOpen, said.open, said.later})
        CHECK_FALSE(word.isEmpty());
    for (int kind = 1; kind <= 17; ++kind) {
        const auto instruction = static_cast<aftercare::InstructionKind>(kind);
        CHECK_FALSE(all.contains(diaryapp::instructionTitle(instruction)));
    }
    for (const auto symptom : recovery::allSymptoms)
        CHECK_FALSE(all.contains(diaryapp::symptomName(symptom), Qt::CaseInsensitive));
    CHECK_FALSE(all.contains(QLatin1String("Practice at the Quay")));
}

TEST_CASE("ticking a reminder takes its bell away; putting it off from the bell moves it", "[diary][bells]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->reminders()->allow(true);
    const auto rings = [&](clock::Instant at) {
        const auto& booked = patient.bells().booked;
        return std::any_of(booked.begin(), booked.end(), [&](const auto& bell) { return bell.at == at; });
    };
    const auto evening = patient.zone().instantOf(patient.zone().moment(patient.clock().now()).day(), 19h);
    REQUIRE(rings(evening));

    patient.goTo(0, 19, 1);
    patient.bells().booked.erase(patient.bells().booked.begin());
    Q_EMIT patient.bells().laterAsked();
    CHECK(rings(patient.clock().now() + 30min));
    // What was due since noon rang before: the half hour is not for it.
    const auto stays = program->today()->due();
    REQUIRE(stays.size() == 1);
    CHECK(stays.front().title == diaryapp::instructionTitle(aftercare::InstructionKind::spareFace));

    patient.goTo(0, 19, 32);
    program->openToday();
    const auto due = program->today()->due();
    REQUIRE_FALSE(due.isEmpty());
    for (const auto& line : due)
        program->today()->done(line.key);
    CHECK(program->reminders()->bells().next > patient.clock().now());
}

TEST_CASE("a bell that the phone rings late is not taken back while what it rings for is open", "[diary][bells]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->reminders()->allow(true);
    const auto evening = patient.zone().instantOf(patient.zone().moment(patient.clock().now()).day(), 19h);
    const auto isHeld = [&] {
        return std::ranges::find(patient.bells().booked, evening, &aftercare::Booking::at) != patient.bells().booked.end();
    };
    REQUIRE(isHeld());

    patient.goTo(0, 19, 1);
    program->syncNow();
    CHECK(isHeld());
    CHECK(program->reminders()->bells().next > patient.clock().now());

    program->openToday();
    for (const auto& line : program->today()->due())
        if (line.title == QLatin1String("Dressings off"))
            program->today()->done(line.key);
    CHECK_FALSE(isHeld());
}

TEST_CASE("a bell that is touched opens the day, but never throws an entry away", "[diary][bells]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openSettings();
    Q_EMIT patient.bells().openAsked();
    CHECK(program->page() == Page::today);
    program->openEntry();
    program->entry()->answer(1, 3);
    Q_EMIT patient.bells().openAsked();
    CHECK(program->page() == Page::entry);
}

TEST_CASE("a try rings at once and says what to look for, and says so when the device refuses", "[diary][bells]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->reminders()->tryBell();
    CHECK(patient.bells().tries == 0);
    program->reminders()->allow(true);
    program->reminders()->tryBell();
    CHECK(patient.bells().tries == 1);
    CHECK(program->reminders()->tried().contains(patient.bells().said.text));
    patient.bells().refuses = true;
    program->reminders()->tryBell();
    CHECK(program->reminders()->tried() == QLatin1String("It did not ring. This device refused it."));
}

TEST_CASE("after a bell that the device refused the day says that nothing rings, until one rings again", "[diary][bells]")
{
    const QString silent = QStringLiteral("Reminders do not ring. What is due stands here.");
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->reminders();
    board.allow(true);
    SECTION("a try")
    {
        patient.bells().refuses = true;
        board.tryBell();
        CHECK(board.card() == silent);
        CHECK(board.state() == silent);
        CHECK(board.isTryOffered());
        patient.bells().refuses = false;
        board.tryBell();
        CHECK_FALSE(board.card() == silent);
        CHECK(board.silence().isEmpty());
    }
    SECTION("a later one: she is not asked to try before she leaves the clinic")
    {
        board.tryBell();
        board.putTryAway();
        REQUIRE(board.card().isEmpty());
        Q_EMIT patient.bells().failed();
        CHECK(board.card() == silent);
        CHECK_FALSE(board.isTryOffered());
        CHECK(board.tried().isEmpty());
        Q_EMIT patient.bells().rang();
        CHECK(board.card().isEmpty());
    }
}

TEST_CASE("after the yes the day offers to try a bell, until one was tried or the offer is put away", "[diary][bells]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const auto offered = [&] { return program->reminders()->isTryOffered(); };
    const auto startsAnew = [&] {
        program.reset();
        program = patient.program(QStringLiteral("en"));
        program->locking()->unlock(QString::fromLatin1(DemoPatient::passphrase));
        REQUIRE(program->home().isOpen());
    };
    CHECK_FALSE(offered());
    program->reminders()->allow(false);
    CHECK_FALSE(offered());
    program->reminders()->allow(true);
    CHECK(program->reminders()->card() == QLatin1String("Reminders ring now. Try one before you leave the clinic."));
    startsAnew();
    CHECK(offered());

    SECTION("tried: what to look for stays in sight, and is gone the next time")
    {
        program->reminders()->tryBell();
        CHECK(patient.bells().tries == 1);
        CHECK(offered());
        CHECK(program->reminders()->tried().contains(patient.bells().said.text));
        startsAnew();
        CHECK(program->reminders()->card().isEmpty());
        program->reminders()->tryBell();  // under Settings, whenever she likes
        CHECK(patient.bells().tries == 2);
        CHECK_FALSE(offered());
    }
    SECTION("put away")
    {
        program->reminders()->putTryAway();
        CHECK_FALSE(offered());
        startsAnew();
        CHECK_FALSE(offered());
    }
    SECTION("a bell that the device refused was no try")
    {
        patient.bells().refuses = true;
        program->reminders()->tryBell();
        CHECK(program->reminders()->tried() == QLatin1String("It did not ring. This device refused it."));
        startsAnew();
        CHECK(offered());
    }
}

TEST_CASE("a phone that may ring late is said to, and the person is led to where that can be changed", "[diary][bells]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->reminders();
    patient.bells().punctual = false;
    CHECK(board.late().isEmpty());  // nothing rings yet
    board.allow(true);
    CHECK(board.late() == QLatin1String("To save power, this phone may ring some minutes late."));
    board.askPunctual();
    CHECK(patient.bells().punctualAsked == 1);
    patient.bells().punctual = true;
    CHECK(board.late().isEmpty());
}

TEST_CASE("quiet hours are kept in the vault and move the bells", "[diary][bells]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->reminders();
    board.allow(true);
    const auto inside = [&](int from, int to) {
        int count = 0;
        for (const auto& bell : patient.bells().booked) {
            const int minute = patient.zone().moment(bell.at).minuteOfDay();
            count += minute >= from * 60 && minute < to * 60 ? 1 : 0;
        }
        return count;
    };
    REQUIRE(inside(12, 14) > 0);
    board.setQuietFrom(12);
    board.setQuietTo(14);
    CHECK(inside(12, 14) == 0);
    CHECK(board.hours().at(board.quietTo()) == QLatin1String("2:00 PM"));
    board.setQuiet(false);
    CHECK(inside(12, 14) > 0);
    board.setQuiet(true);

    program.reset();
    auto again = patient.program(QStringLiteral("en"));
    again->locking()->unlock(QString::fromLatin1(DemoPatient::passphrase));
    CHECK(again->reminders()->isQuiet());
    CHECK(again->reminders()->quietFrom() == 12);
    CHECK(again->reminders()->quietTo() == 14);
}

TEST_CASE("reminders keep the wall clock when the phone travels", "[diary][bells]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->reminders()->allow(true);
    const auto newYork = *aftercare::Zone::find("America/New_York");
    program->travelTo(newYork);
    const auto& booked = patient.bells().booked;
    CHECK(std::any_of(booked.begin(), booked.end(), [&](const auto& bell) { return newYork.moment(bell.at).minuteOfDay() == 20 * 60; }));
    for (const auto& bell : booked) {
        const int minute = newYork.moment(bell.at).minuteOfDay();
        CHECK((minute >= 7 * 60 && minute < 22 * 60));
    }
}

TEST_CASE("the calendar file is strict, says the same at each reminder, and can be taken again", "[diary][bells][calendar]")
{
    const auto language = GENERATE("en", "ar", "zh_CN");
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    QTemporaryDir folder;
    const auto made = [&](const char* name) {
        const QString path = folder.filePath(QLatin1String(name));
        program->reminders()->saveCalendar(QUrl::fromLocalFile(path));
        QFile file(path);
        REQUIRE(file.open(QIODevice::ReadOnly));
        return test::readStrictly(file.readAll().toStdString());
    };
    const auto read = made("one.ics");
    CHECK(read.faults == std::vector<std::string>{});
    REQUIRE(read.events.size() == program->home().diary().bellMoments().size());
    for (const auto& event : read.events) {
        CHECK(event.summary == read.events.front().summary);
        CHECK(event.alarms == 1);
    }
    const auto again = made("two.ics");
    for (std::size_t i = 0; i < again.events.size(); ++i)
        CHECK(again.events[i].uid == read.events[i].uid);

    program->reminders()->saveCalendar(QUrl::fromLocalFile(folder.filePath(QStringLiteral("no/such/folder.ics"))));
    CHECK_FALSE(program->reminders()->calendarOutcome().isEmpty());
    CHECK_FALSE(QFile::exists(folder.filePath(QStringLiteral("no/such/folder.ics"))));
}

TEST_CASE("the calendar file goes to an address that is no path, as phones name what a person chose", "[diary][bells][calendar]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    QTemporaryDir folder;
    const QString before = QDir::currentPath();
    REQUIRE(QDir::setCurrent(folder.path()));
    REQUIRE(QDir().mkdir(QStringLiteral("content:")));  // what opens such an address for Qt here; on a phone the system does
    {
        QFile longer(QStringLiteral("content:/mine.ics"));  // a phone has made the file before the diary writes
        REQUIRE(longer.open(QIODevice::WriteOnly));
        longer.write(QByteArray(1 << 20, 'x'));
    }
    program->reminders()->saveCalendar(QUrl(QStringLiteral("content://mine.ics")));
    const QString outcome = program->reminders()->calendarOutcome();
    QFile file(QStringLiteral("content:/mine.ics"));
    const bool opens = file.open(QIODevice::ReadOnly);
    const auto read = test::readStrictly(file.readAll().toStdString());
    program->reminders()->saveCalendar(QUrl(QStringLiteral("content://nobody/there.ics")));
    REQUIRE(QDir::setCurrent(before));

    CHECK(outcome == QLatin1String("Done. Open the file with your calendar."));
    REQUIRE(opens);
    CHECK(read.faults == std::vector<std::string>{});
    CHECK(read.events.size() == program->home().diary().bellMoments().size());
    CHECK(program->reminders()->calendarOutcome() == QLatin1String("The file could not be written there. Choose another place."));
}
