// Writing an entry: nothing pre-filled, every tap durable, nothing said that was not tapped.
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/generators/catch_generators_range.hpp>

#include <random>

using namespace ebbline;
using diaryapp::EntryBoard;
using recovery::Side;
using recovery::Sign;
using recovery::Symptom;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

void toSigns(EntryBoard& board)
{
    while (board.step() == EntryBoard::Step::Score)
        board.next();
}

recovery::Entry lastEntry(app::DiaryProgram& program)
{
    return program.home().diary().history().front().history.current();
}

/// The phone's battery dies: nothing is saved on the way out.
void restart(DemoPatient& patient, std::unique_ptr<app::DiaryProgram>& program)
{
    program.reset();
    program = patient.program(QStringLiteral("en"));
    REQUIRE(program->home().unlock(bytes::viewOf(DemoPatient::passphrase)));
}

}  // namespace

TEST_CASE("a new entry has nothing in it; last time's answers are only shown", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 4);
    patient.goTo(1, 20);

    program->openEntry();

    auto& board = *program->entry();
    CHECK(board.progress() == QLatin1String("1 of 7"));
    for (const auto& side : board.sides()) {
        CHECK(side.points == -1);
        CHECK(side.before == QLatin1String("Last time 4"));
    }
    CHECK(board.nextWord() == QLatin1String("Skip this one"));
    CHECK(board.temperature().isEmpty());
    CHECK(board.note().isEmpty());
}

TEST_CASE("the right side stands on the left, as in a picture of the face", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(GENERATE(QStringLiteral("en"), QStringLiteral("ar")));
    program->openEntry();
    const auto sides = program->entry()->sides();
    REQUIRE(sides.size() == 2);
    CHECK(sides[0].side == static_cast<int>(Side::right));
    CHECK(sides[1].side == static_cast<int>(Side::left));
}

TEST_CASE("every tap is there again after the phone died, at the question where it was", "[diary][entry]")
{
    const auto seed = GENERATE(range(1U, 9U));
    CAPTURE(seed);
    std::mt19937 random(seed);
    const auto below = [&](int end) { return static_cast<int>(random() % static_cast<unsigned>(end)); };
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    const int questions = below(5);
    std::vector<std::array<int, 2>> tapped;
    for (int question = 0; question <= questions; ++question) {
        tapped.push_back({below(11), below(11)});
        program->entry()->answer(1, below(11));  // changed one's mind
        program->entry()->answer(1, tapped.back()[0]);
        program->entry()->answer(2, tapped.back()[1]);
        if (question < questions)
            program->entry()->next();
    }

    restart(patient, program);
    program->openEntry();

    auto& board = *program->entry();
    CHECK(board.progress() == QStringLiteral("%1 of 7").arg(questions + 2));
    for (int question = questions; question >= 0; --question) {
        board.back();
        CHECK(board.sides()[0].points == tapped[static_cast<std::size_t>(question)][1]);
        CHECK(board.sides()[1].points == tapped[static_cast<std::size_t>(question)][0]);
    }
    board.discard();
    CHECK_FALSE(program->home().diary().draft().has_value());
}

TEST_CASE("ticked signs, temperature and note survive as well", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    toSigns(*program->entry());
    program->entry()->tick(static_cast<int>(Sign::threadLump), true);
    program->entry()->next();
    program->entry()->typeTemperature(QStringLiteral("37.4"));
    program->entry()->writeNote(QStringLiteral("It pulls when I chew."));

    restart(patient, program);
    program->openEntry();

    auto& board = *program->entry();
    CHECK(board.temperature() == QLatin1String("37.4"));
    CHECK(board.note() == QLatin1String("It pulls when I chew."));
    toSigns(board);
    for (const auto& line : board.signLines())
        CHECK(line.ticked == (line.sign == static_cast<int>(Sign::threadLump)));
}

TEST_CASE("a skipped question is missing, never zero", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    program->entry()->answer(1, 0);
    toSigns(*program->entry());
    program->entry()->signsDone();
    program->entry()->save();

    const auto entry = lastEntry(*program);
    REQUIRE(entry.scores.size() == 1);
    CHECK(entry.scores.at({Symptom::swelling, Side::left}).points() == 0);
}

TEST_CASE("only the button under the signs says no to them", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->entry();

    SECTION("leaving the page says nothing")
    {
        program->openEntry();
        board.answer(1, 3);
        toSigns(board);
        CHECK(board.signsWord() == QLatin1String("None of these"));
        board.next();
        board.save();
        CHECK(lastEntry(*program).absent.empty());
        CHECK(lastEntry(*program).present.empty());
    }
    SECTION("the button says no to all that is not ticked")
    {
        program->openEntry();
        toSigns(board);
        board.tick(static_cast<int>(Sign::threadLump), true);
        CHECK(board.signsWord() == QLatin1String("Only what I ticked"));
        board.signsDone();
        board.save();
        CHECK(lastEntry(*program).present == recovery::Signs{Sign::threadLump});
        CHECK(lastEntry(*program).absent.size() == recovery::allSigns.size() - 1);
    }
    SECTION("a tick that was taken back is no sign")
    {
        program->openEntry();
        toSigns(board);
        board.tick(static_cast<int>(Sign::breathing), true);
        board.tick(static_cast<int>(Sign::breathing), false);
        board.signsDone();
        board.save();
        CHECK(lastEntry(*program).present.empty());
        CHECK(board.findings().empty());
    }
}

TEST_CASE("a temperature is read in both units and as it is typed", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->entry();
    program->openEntry();
    const auto degrees = [&] { return program->home().diary().draft()->entry.temperature->celsius(); };

    board.typeTemperature(QStringLiteral("38.2"));
    CHECK(std::abs(degrees() - 38.2) < 0.01);
    board.typeTemperature(QStringLiteral(" 38,4 "));
    CHECK(std::abs(degrees() - 38.4) < 0.01);
    board.setFahrenheit(true);
    CHECK(board.temperatureProblem() == QStringLiteral("38,4 looks like °C. Choose °C, or type a value from 86 to 113 °F."));
    board.writeTemperature(QStringLiteral("101"));
    CHECK(board.temperatureProblem().isEmpty());
    CHECK(std::abs(degrees() - 38.33) < 0.01);
}

TEST_CASE("a number of the other unit is said to be one", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->entry();
    program->openEntry();

    board.writeTemperature(QStringLiteral("98.6"));
    CHECK(board.temperatureProblem() == QStringLiteral("98.6 looks like °F. Choose °F, or type a value from 30 to 45 °C."));
    board.setFahrenheit(true);
    CHECK(board.temperatureProblem().isEmpty());
    board.writeTemperature(QStringLiteral("37"));
    CHECK(board.temperatureProblem() == QStringLiteral("37 looks like °C. Choose °C, or type a value from 86 to 113 °F."));
    for (const char* neither : {"60", "12", "200", "warm"}) {
        board.writeTemperature(QString::fromLatin1(neither));
        CHECK(board.temperatureProblem() == QStringLiteral("Please type a value from 86 to 113 °F."));
    }
}

TEST_CASE("Arabic digits are a temperature too", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("ar"));
    program->openEntry();
    program->entry()->writeTemperature(QStringLiteral("٣٨٫٥"));
    CHECK(program->entry()->temperatureProblem().isEmpty());
    CHECK(std::abs(program->home().diary().draft()->entry.temperature->celsius() - 38.5) < 0.01);
}

TEST_CASE("an entry with a temperature that is none is not saved without it: it may be a fever", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->entry();
    program->openEntry();
    board.answer(1, 3);
    toSigns(board);
    board.signsDone();

    board.typeTemperature(QStringLiteral("3"));
    CHECK(board.temperatureProblem().isEmpty());  // still typing
    board.save();

    CHECK(board.temperatureProblem() == QStringLiteral("Please type a value from 30 to 45 °C."));
    CHECK(program->home().diary().history().empty());
    CHECK(program->page() == app::DiaryProgram::Page::entry);
    board.typeTemperature(QStringLiteral("38.6"));
    board.save();
    REQUIRE_FALSE(program->home().diary().history().empty());
    CHECK(lastEntry(*program).temperature.has_value());
}

TEST_CASE("nothing answered is not an entry, and the page says so", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    toSigns(*program->entry());
    program->entry()->next();
    program->entry()->save();

    CHECK(program->entry()->problem() == QLatin1String("Nothing is answered yet."));
    CHECK(program->home().diary().history().empty());
}

TEST_CASE("a note that is too long is cut between whole characters", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    const QString letter = GENERATE(QStringLiteral("a"), QStringLiteral("ü"), QStringLiteral("ع"), QStringLiteral("𝄞"));
    program->entry()->writeNote(letter.repeated(3000));

    const QString kept = program->entry()->note();
    CHECK(static_cast<std::size_t>(kept.toUtf8().size()) <= recovery::Entry::maximumNote);
    CHECK(kept.size() > 400);
    CHECK(letter.repeated(kept.size()).startsWith(kept));
    CHECK(kept.size() % letter.size() == 0);
}

TEST_CASE("two more questions come on request, and are asked in their order", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->entry();
    program->openEntry();
    toSigns(board);
    board.signsDone();
    REQUIRE(board.isMoreOffered());

    board.askMore();

    CHECK(board.question() == QLatin1String("How much do you feel sharp stabs?"));
    CHECK(board.progress() == QLatin1String("6 of 9"));
    board.answer(2, 5);
    board.next();
    CHECK(board.question() == QLatin1String("How numb is the skin?"));
    board.next();
    CHECK(board.step() == EntryBoard::Step::Signs);
    board.next();
    CHECK_FALSE(board.isMoreOffered());
    board.save();
    CHECK(lastEntry(*program).scores.at({Symptom::twinges, Side::right}).points() == 5);
}

TEST_CASE("a correction keeps the first version, and leaves the entry being typed alone", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->entry();
    DemoPatient::tell(*program, 6);
    patient.goTo(1, 20);
    program->openEntry();
    board.answer(1, 2);  // begun, not saved

    program->amend(program->history()->entries().first().key);
    REQUIRE(board.isAmending());
    CHECK(board.sides().first().points == 6);
    board.answer(2, 5);
    board.save();

    const auto history = program->home().diary().history();
    REQUIRE(history.size() == 1);
    CHECK(history.front().history.amended());
    CHECK(history.front().history.versions.front().value.scores.at({Symptom::swelling, Side::right}).points() == 6);
    CHECK(history.front().history.current().scores.at({Symptom::swelling, Side::right}).points() == 5);
    REQUIRE(program->home().diary().draft());
    CHECK(program->home().diary().draft()->entry.scores.at({Symptom::swelling, Side::left}).points() == 2);
}

TEST_CASE("a correction that is left leaves everything as it was", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 6);
    program->amend(program->history()->entries().first().key);
    program->entry()->answer(2, 1);
    program->back();

    CHECK(program->page() == app::DiaryProgram::Page::today);
    CHECK_FALSE(program->home().diary().history().front().history.amended());
}

TEST_CASE("what was just saved can be corrected from the page it leads to", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 3);
    REQUIRE(program->isUndoShown());
    CHECK(program->notice().startsWith(QLatin1String("Saved on this phone.")));

    program->undoSave();

    CHECK(program->page() == app::DiaryProgram::Page::entry);
    CHECK(program->entry()->isAmending());
    CHECK_FALSE(program->isUndoShown());
}

TEST_CASE("throwing an entry away asks first, and names the sign that would go with what it calls for", "[diary][entry][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    auto& board = *program->entry();
    board.answer(1, 4);
    toSigns(board);
    board.tick(static_cast<int>(recovery::Sign::breathing), true);
    board.signsDone();
    program->warning()->confirm();
    board.askDiscard();
    CHECK(board.isThrowing());
    CHECK(program->page() == Page::entry);
    CHECK(board.throwText().contains(QLatin1String("It is hard to breathe")));
    CHECK(board.throwText().contains(QLatin1String("Call the emergency number now")));
    CHECK(program->home().diary().draft()->entry.present.contains(recovery::Sign::breathing));

    board.keepTyping();
    CHECK_FALSE(board.isThrowing());
    board.askDiscard();
    board.back();  // another page answers nothing
    CHECK_FALSE(board.isThrowing());
    CHECK(program->home().diary().draft().has_value());
    board.askDiscard();
    board.discard();
    CHECK_FALSE(program->home().diary().draft().has_value());
    CHECK(program->page() == Page::today);
}

TEST_CASE("where nothing was typed, nothing is asked before it goes", "[diary][entry]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    while (program->entry()->step() != EntryBoard::Step::Rest)
        program->entry()->next();
    program->entry()->askDiscard();
    CHECK(program->page() == Page::today);
}
