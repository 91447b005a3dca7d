// Forgotten moments, corrections with their history, and drafts that nothing loses.
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using diaryapp::EntryBoard;
using recovery::Side;
using recovery::Symptom;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

void restart(DemoPatient& patient, std::unique_ptr<app::DiaryProgram>& program)
{
    program.reset();
    program = patient.program(QStringLiteral("en"));
    program->locking()->unlock(QString::fromLatin1(DemoPatient::passphrase));
}

}  // namespace

TEST_CASE("an entry is about now unless an earlier moment is chosen", "[diary][moment]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(2, 20, 10);
    program->openEntry();
    auto& moment = *program->entry()->moment();
    CHECK_FALSE(moment.isEarlier());
    CHECK(moment.text() == QLatin1String("This is about now."));
    program->entry()->answer(1, 3);
    program->entry()->save();
    CHECK(program->home().diary().history().front().history.current().at == program->home().now());
}

TEST_CASE("a forgotten moment is written with its true time, and marked with both", "[diary][moment]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(2, 9, 10);
    program->openEarlier();
    auto& moment = *program->entry()->moment();
    REQUIRE(moment.isChoosing());
    CHECK(moment.days() == QStringList{"Today", "Yesterday", "1 March"});
    moment.chooseDay(1);
    CHECK(moment.day() == 1);
    const auto times = moment.times();
    REQUIRE(times.size() == 48);
    moment.chooseTime(static_cast<int>(times.indexOf(QLatin1String("8:30 PM"))));
    CHECK(moment.text() == QLatin1String("This is about yesterday 8:30 PM."));
    program->entry()->answer(1, 5);
    program->entry()->save();

    const auto lines = program->history()->entries();
    REQUIRE(lines.size() == 1);
    CHECK(lines.first().title == QLatin1String("Day 1, yesterday 8:30 PM"));
    CHECK(lines.first().marks == QLatin1String("Written later, today 9:10 AM."));
    const auto entry = program->home().diary().history().front().history.current();
    CHECK(entry.isLate());
    CHECK(entry.recordedAt == program->home().now());
}

TEST_CASE("what is being typed about now is not dated back because an earlier moment is asked for", "[diary][moment][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(2, 9, 10);
    program->openEntry();
    program->entry()->answer(1, 6);
    program->openToday();
    program->openEarlier();

    CHECK(program->page() == app::DiaryProgram::Page::entry);
    CHECK_FALSE(program->entry()->moment()->isChoosing());
    CHECK(program->notice().startsWith(QLatin1String("You began this entry before.")));
    const auto kept = program->home().diary().draft();
    REQUIRE(kept);
    CHECK(kept->entry.at.day() == program->home().now().day());
    CHECK(kept->entry.scores.begin()->second.points() == 6);
}

TEST_CASE("only moments between the treatment and now are offered", "[diary][moment]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(1, 0, 10);
    program->openEarlier();
    auto& moment = *program->entry()->moment();
    CHECK(moment.days() == QStringList{"Today", "Yesterday"});
    CHECK(moment.times() == QStringList{"12:00 AM"});
    moment.chooseDay(1);
    const auto treated = program->home().diary().course().treated;
    for (int i = 0; i < moment.times().size(); ++i) {
        moment.chooseTime(i);
        CHECK(moment.at().at >= treated.at);
        CHECK(moment.at().at <= patient.clock().now());
    }
    moment.chooseTime(900);
    moment.chooseDay(-1);
    CHECK(moment.at().at >= treated.at);
}

TEST_CASE("what was just saved is what is corrected, also when it is about an earlier moment", "[diary][moment]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(2, 9, 0);
    DemoPatient::tell(*program, 2);
    patient.goTo(2, 9, 30);
    program->openEarlier();
    program->entry()->moment()->chooseDay(1);
    program->entry()->answer(1, 5);
    program->entry()->save();
    const auto saved = program->entry()->savedEntry();
    REQUIRE(saved);
    REQUIRE(program->home().diary().history().front().history.current().id != *saved);
    REQUIRE(program->isUndoShown());

    program->undoSave();

    CHECK(program->entry()->isAmending());
    CHECK(program->entry()->sides().last().points == 5);  // of the left side, which stands on the right
    program->entry()->answer(1, 6);
    program->entry()->save();
    CHECK(program->entry()->savedEntry() == saved);
    for (const auto& view : program->home().diary().history())
        CHECK(view.history.amended() == (view.history.current().id == *saved));

    // An older entry, corrected from the list: the page that follows offers that one again.
    program->undoSave();
    CHECK(program->entry()->isAmending());
    CHECK(program->entry()->sides().last().points == 6);
}

TEST_CASE("what is asked as last time is what was before the moment that is written about", "[diary][moment]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(1, 20);
    DemoPatient::tell(*program, 7);
    patient.goTo(3, 20);
    DemoPatient::tell(*program, 2);
    program->openEarlier();
    CHECK(program->entry()->sides().first().before == QLatin1String("Last time 7"));
}

TEST_CASE("an earlier moment survives the end of the program, and can be given up for now", "[diary][moment][draft]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(2, 9, 10);
    program->openEarlier();
    program->entry()->moment()->chooseDay(1);
    const auto chosen = program->entry()->moment()->at();
    restart(patient, program);
    CHECK(program->today()->writeWord() == QLatin1String("Go on with your entry"));
    program->openEntry();
    CHECK(program->entry()->moment()->isEarlier());
    CHECK(program->entry()->moment()->at() == chosen);

    program->entry()->moment()->useNow();
    program->entry()->answer(1, 2);
    program->entry()->save();
    CHECK(program->home().diary().history().front().history.current().at == program->home().now());
}

TEST_CASE("an entry begun yesterday keeps its moment and says so; one begun without a word does not", "[diary][moment][draft]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(1, 21, 0);
    program->openEntry();
    program->entry()->next();
    program->back();
    program->back();
    CHECK(program->today()->writeWord() == QLatin1String("Write down how it is"));
    patient.goTo(1, 21, 5);
    program->openEntry();
    program->entry()->answer(1, 4);
    restart(patient, program);
    patient.goTo(2, 8, 0);
    program->openEntry();
    auto& moment = *program->entry()->moment();
    CHECK(moment.text() == QLatin1String("This is about yesterday 9:05 PM."));
    CHECK(moment.isAsking());
    CHECK(moment.askText() == QLatin1String("You began this yesterday 9:05 PM. Is what you typed about then, or about now?"));

    SECTION("about then: it goes on where it was, and is not asked again")
    {
        moment.keepThen();
        CHECK_FALSE(moment.isAsking());
        CHECK(program->entry()->progress() == QLatin1String("1 of 7"));
        program->entry()->answer(2, 3);
        restart(patient, program);
        patient.goTo(2, 9, 0);
        program->openEntry();
        CHECK_FALSE(program->entry()->moment()->isAsking());
        program->entry()->save();
        CHECK(program->history()->entries().first().title == QLatin1String("Day 1, yesterday 9:05 PM"));
    }
    SECTION("about now: each question comes again with what was touched, and now is what is saved")
    {
        while (program->entry()->step() != EntryBoard::Step::Rest)
            program->entry()->step() == EntryBoard::Step::Signs ? program->entry()->signsDone() : program->entry()->next();
        CHECK_FALSE(program->home().diary().draft()->entry.absent.empty());
        moment.useNow();
        CHECK_FALSE(moment.isAsking());
        CHECK(program->entry()->progress() == QLatin1String("1 of 7"));
        CHECK(program->entry()->sides()[1].points == 4);
        CHECK(program->home().diary().draft()->entry.absent.empty());  // yesterday's "none of these" says nothing of today
        program->entry()->save();
        CHECK(program->home().diary().history().front().history.current().at == program->home().now());
    }
    SECTION("the way back leaves the question open")
    {
        program->back();
        CHECK(program->page() == Page::today);
        program->openEntry();
        CHECK(program->entry()->moment()->isAsking());
    }
}

TEST_CASE("an entry that was begun a moment ago asks nothing", "[diary][moment][draft]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(1, 21, 0);
    program->openEntry();
    program->entry()->answer(1, 4);
    patient.goTo(1, 21, 20);
    restart(patient, program);
    program->openEntry();
    CHECK_FALSE(program->entry()->moment()->isAsking());
}

TEST_CASE("weakness of the face that was ticked while numb is judged by the moment it is said to be about", "[diary][moment][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    patient.goTo(0, 12);
    program->openEntry();
    program->entry()->tick(static_cast<int>(recovery::Sign::faceWeakness), true);
    patient.goTo(1, 9);
    restart(patient, program);
    program->openEntry();
    REQUIRE(program->entry()->moment()->isAsking());
    const bool now = GENERATE(true, false);
    now ? program->entry()->moment()->useNow() : program->entry()->moment()->keepThen();
    program->entry()->save();
    CHECK((program->page() == Page::warning) == now);
}

TEST_CASE("what is typed but is no temperature yet survives too", "[diary][draft]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    program->entry()->typeTemperature(QStringLiteral("3"));
    restart(patient, program);
    program->openEntry();
    CHECK(program->entry()->temperature() == QLatin1String("3"));
    CHECK(program->entry()->step() == EntryBoard::Step::Score);
}

TEST_CASE("the questions on request, and the page, survive as well", "[diary][draft]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    while (program->entry()->step() == EntryBoard::Step::Score)
        program->entry()->next();
    program->entry()->signsDone();
    program->entry()->askMore();
    const QString question = program->entry()->question();
    restart(patient, program);
    program->openEntry();
    CHECK(program->entry()->question() == question);
    CHECK(program->entry()->progress() == QLatin1String("6 of 9"));
}

TEST_CASE("a correction survives the end of the program and is gone on with", "[diary][draft]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 6);
    const QString key = program->history()->entries().first().key;
    program->amend(key);
    program->entry()->answer(1, 2);
    restart(patient, program);
    CHECK(program->history()->entries().first().begun);
    CHECK_FALSE(program->home().diary().history().front().history.amended());
    program->amend(key);
    CHECK(program->entry()->sides().last().points == 2);
    program->entry()->save();
    CHECK(program->home().diary().history().front().history.current().scores.at({Symptom::swelling, Side::left}).points() == 2);
    CHECK_FALSE(program->history()->entries().first().begun);
}

TEST_CASE("every version of a corrected entry stays in sight, newest first", "[diary][history]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 6);
    for (const int points : {4, 2}) {
        patient.clock().advance(std::chrono::minutes(10));
        program->amend(program->history()->entries().first().key);
        program->entry()->answer(1, points);
        program->entry()->save();
    }
    const auto line = program->history()->entries().first();
    CHECK(line.scores.contains(QLatin1String("Swelling: right 6, left 2")));
    CHECK(line.before.indexOf(QLatin1String("Swelling: right 6, left 4")) < line.before.indexOf(QLatin1String("Swelling: right 6, left 6")));
    CHECK(line.before.count(QLatin1String("As written today")) == 2);
    CHECK(line.marks.startsWith(QLatin1String("Corrected today")));
}

TEST_CASE("a day holds as many entries as one likes, each with its time", "[diary][history]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    for (const int hour : {12, 15, 18, 21}) {
        patient.goTo(0, hour);
        DemoPatient::tell(*program, hour / 4);
    }
    const auto lines = program->history()->entries();
    REQUIRE(lines.size() == 4);
    CHECK(lines.first().title == QLatin1String("Day 0, today 9:00 PM"));
    CHECK(lines.last().title == QLatin1String("Day 0, today 12:00 PM"));
}

TEST_CASE("a note of the clinic is seen once its page was opened, and a note of mine is read once it says so", "[diary][notes]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.writes("How is the left side?");
    program->syncNow();
    CHECK(program->today()->unread() == QLatin1String("1 new note from the clinic"));
    CHECK(program->history()->notes().first().state.isEmpty());
    program->openNotes();
    CHECK(program->history()->notes().first().state.startsWith(QLatin1String("Seen by you, today ")));
    CHECK(program->today()->unread().isEmpty());

    program->history()->writeNote(QStringLiteral("Better."));
    CHECK(program->history()->notes().last().state == QLatin1String("Not read by the clinic yet"));
    program->syncNow();
    patient.opens();
    program->syncNow();
    CHECK(program->history()->notes().last().state.startsWith(QLatin1String("Read by the clinic, today ")));
}
