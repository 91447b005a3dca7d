// A warning waits for nothing: neither for the rest of the entry, nor for a temperature that is none, nor for storage.
#include "tests/app/full_disk.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using diaryapp::EntryBoard;
using recovery::Sign;
using screens::DemoPatient;
using tests::FullDisk;
using Page = app::DiaryProgram::Page;

namespace {

void tickAll(app::DiaryProgram& program, std::initializer_list<Sign> signs)
{
    program.openEntry();
    auto& entry = *program.entry();
    while (entry.step() == EntryBoard::Step::Score)
        entry.next();
    for (const Sign sign : signs)
        entry.tick(static_cast<int>(sign), true);
}

/// How often the phone recorded that a warning was read.
std::size_t timesRead(app::DiaryProgram& program)
{
    const auto& courses = program.home().diary().vault().state().courses;
    REQUIRE(courses.size() == 1);
    const auto& shown = courses.begin()->second.warnings;
    return static_cast<std::size_t>(std::ranges::count_if(shown, &records::WarningShown::confirmed));
}

}  // namespace

TEST_CASE("an emergency sign warns before a temperature that is none, and before anything is saved", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    tickAll(*program, {Sign::breathing});
    auto& entry = *program->entry();

    SECTION("although she went on without the button")
    {
        entry.next();
        CHECK(program->page() == Page::entry);
        entry.typeTemperature(QStringLiteral("98.6"));
        entry.save();
        CHECK(program->warning()->unsaved().endsWith(QLatin1String("Please look at the temperature. Then save again.")));
        CHECK(entry.temperatureProblem().startsWith(QStringLiteral("98.6 looks like °F.")));
    }
    SECTION("as soon as the signs are answered")
    {
        entry.signsDone();
        CHECK(program->warning()->unsaved() == QLatin1String("Your entry is not saved yet, and not with the clinic. You can go on with it after the call."));
    }
    REQUIRE(program->page() == Page::warning);
    CHECK(program->warning()->isEmergency());
    CHECK(program->warning()->title() == QLatin1String("Call the emergency number now"));
    CHECK(program->home().diary().history().empty());

    // Nothing else takes its place until it was read; then the entry goes on where it was.
    program->openToday();
    CHECK(program->page() == Page::warning);
    program->warning()->confirm();
    CHECK(program->page() == Page::entry);
    CHECK(entry.step() == EntryBoard::Step::Rest);
}

TEST_CASE("a warning that was read while the entry was typed is recorded with it, and not shown again as new", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    tickAll(*program, {Sign::breathing});
    program->entry()->signsDone();
    REQUIRE(program->page() == Page::warning);
    CHECK(timesRead(*program) == 0);
    program->warning()->confirm();
    program->entry()->save();

    CHECK(program->page() == Page::today);
    CHECK(program->notice().startsWith(QLatin1String("Saved on this phone.")));
    CHECK(timesRead(*program) == 1);
    CHECK(program->home().diary().today().standing.empty());
    CHECK(program->history()->entries().first().loud);
}

TEST_CASE("what the rest of the entry adds is shown as new, however much was read before", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    tickAll(*program, {Sign::fastSwelling});
    program->entry()->signsDone();
    REQUIRE(program->page() == Page::warning);
    program->warning()->confirm();
    program->entry()->typeTemperature(QStringLiteral("38.6"));
    program->entry()->save();

    REQUIRE(program->page() == Page::warning);
    CHECK(program->warning()->reason().contains(QStringLiteral("Your temperature is 38.6 °C.")));
    CHECK(program->warning()->unsaved().isEmpty());
}

TEST_CASE("a warning of what was only typed is there again after the diary locked or ended", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    tickAll(*program, {Sign::breathing});
    const bool answered = GENERATE(true, false);
    const bool ends = GENERATE(true, false);
    if (answered)
        program->entry()->signsDone();
    if (ends) {
        program.reset();
        program = patient.program(QStringLiteral("en"));
    } else {
        program->lockIdle();
        CHECK(program->page() == (answered ? Page::call : Page::lock));
    }
    REQUIRE(program->home().unlock(bytes::viewOf(DemoPatient::passphrase)));

    REQUIRE(program->page() == Page::warning);
    CHECK(program->warning()->isEmergency());
    program->warning()->confirm();
    CHECK(program->page() == Page::entry);
    CHECK(program->entry()->signLines().first().text.size() > 0);
    CHECK(std::ranges::count_if(program->entry()->signLines(), &diaryapp::SignLine::ticked) == 1);
}

TEST_CASE("a correction warns of what it adds, not again of what was read", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    DemoPatient::tellSign(*program, Sign::fastSwelling);
    program->warning()->confirm();
    REQUIRE(program->page() == Page::today);

    program->amend(program->history()->entries().first().key);
    auto& entry = *program->entry();
    while (entry.step() == EntryBoard::Step::Score)
        entry.next();
    entry.signsDone();
    CHECK(program->page() == Page::entry);
    entry.back();
    entry.tick(static_cast<int>(Sign::neckSwelling), true);
    entry.signsDone();
    REQUIRE(program->page() == Page::warning);
    CHECK(program->warning()->isEmergency());
}

TEST_CASE("whoever ticks an emergency and leaves the page is warned at once, by whatever way she leaves", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    tickAll(*program, {Sign::breathing});
    const bool forHelp = GENERATE(true, false);
    const auto leave = [&] {
        if (forHelp)
            return program->openCall();
        for (int steps = 0; program->page() == Page::entry && steps < 20; ++steps)
            program->back();
    };
    leave();
    REQUIRE(program->page() == Page::warning);
    CHECK(program->warning()->isEmergency());
    CHECK(program->warning()->calls().first().emergency);
    CHECK_FALSE(program->warning()->unsaved().isEmpty());
    // Once it was read she comes where she wanted to.
    program->warning()->confirm();
    REQUIRE(program->page() == Page::entry);
    leave();
    CHECK(program->page() == (forHelp ? Page::call : Page::today));
}

TEST_CASE("a sign that was ticked and taken off again warns of nothing", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    tickAll(*program, {Sign::breathing});
    program->entry()->tick(static_cast<int>(Sign::breathing), false);
    program->openCall();
    CHECK(program->page() == Page::call);
}

TEST_CASE("a score that asks for a call is warned of again although no sign was ticked", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    program->openEntry();
    auto& entry = *program->entry();
    entry.next();
    entry.answer(static_cast<int>(recovery::Side::left), 9);  // pain
    while (entry.step() == EntryBoard::Step::Score)
        entry.next();
    entry.signsDone();
    REQUIRE(program->page() == Page::warning);
    program.reset();  // before it was read
    program = patient.program(QStringLiteral("en"));
    REQUIRE(program->home().unlock(bytes::viewOf(DemoPatient::passphrase)));
    REQUIRE(program->page() == Page::warning);
    CHECK(program->warning()->title() == QLatin1String("Call your clinic now"));
}

TEST_CASE("what a correction was given is warned of again after the program ended", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    DemoPatient::tell(*program, 2);
    program->amend(program->history()->entries().first().key);
    auto& entry = *program->entry();
    while (entry.step() == EntryBoard::Step::Score)
        entry.next();
    entry.tick(static_cast<int>(Sign::neckSwelling), true);
    program.reset();
    program = patient.program(QStringLiteral("en"));
    REQUIRE(program->home().unlock(bytes::viewOf(DemoPatient::passphrase)));

    REQUIRE(program->page() == Page::warning);
    CHECK(program->warning()->isEmergency());
    program->warning()->confirm();
    CHECK(program->page() == Page::entry);
    CHECK(program->entry()->isAmending());
    program->entry()->askDiscard();
    program->entry()->discard();
    CHECK(program->page() == Page::today);
}

TEST_CASE("two unread warnings of what was typed come one after the other, each once", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    DemoPatient::tell(*program, 2);
    tickAll(*program, {Sign::breathing});
    program->openCall();
    REQUIRE(program->page() == Page::warning);
    program->warning()->confirm();
    program->amend(program->history()->entries().first().key);
    while (program->entry()->step() == EntryBoard::Step::Score)
        program->entry()->next();
    program->entry()->tick(static_cast<int>(Sign::neckSwelling), true);
    program->openCall();
    REQUIRE(program->page() == Page::warning);
    program->warning()->confirm();
    program->openToday();
    CHECK(program->page() == Page::today);
}

TEST_CASE("a warning that was read is not new again because the phone's clock was set back", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    int day = 0;
    for (const int points : {4, 3, 2, 1, 1, 1}) {
        patient.goTo(day++, 18);
        DemoPatient::tell(*program, points);
        REQUIRE(program->page() == Page::today);
    }
    patient.goTo(day, 18);
    program->openEntry();
    auto& entry = *program->entry();
    while (entry.step() == EntryBoard::Step::Score) {
        for (const auto side : {recovery::Side::left, recovery::Side::right})
            entry.answer(static_cast<int>(side), 6);
        entry.next();
    }
    patient.goTo(day, 9);  // what was typed lies ahead now
    program->openCall();
    REQUIRE(program->page() == Page::warning);
    program->warning()->confirm();
    patient.goTo(day, 9, 5);
    program->openCall();
    CHECK(program->page() == Page::call);
}

TEST_CASE("what a full phone could not keep is warned of when she leaves the page", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    tickAll(*program, {});
    const FullDisk full;
    program->entry()->tick(static_cast<int>(Sign::breathing), true);
    REQUIRE_FALSE(program->entry()->problem().isEmpty());

    program->openCall();
    REQUIRE(program->page() == Page::warning);
    CHECK(program->warning()->isEmergency());
    program->warning()->confirm();
    program->openCall();
    CHECK(program->page() == Page::call);
}

TEST_CASE("what her hands can do about a milder warning is said beside the emergency, and nothing milder than that", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    tickAll(*program, {Sign::breathing, Sign::bleeding, Sign::faceWeakness});
    program->entry()->signsDone();

    auto& board = *program->warning();
    REQUIRE(board.isEmergency());
    CHECK(board.doNow().endsWith(QLatin1String("Keep pressing with a clean cloth.")));
    CHECK_FALSE(board.doNow().contains(QLatin1String("numbing")));
}
