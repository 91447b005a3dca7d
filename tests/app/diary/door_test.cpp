// The way in: making a diary, opening it, joining a clinic.
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using diaryapp::JoinBoard;
using Page = app::DiaryProgram::Page;

namespace {

const QString passphrase = QString::fromLatin1(screens::DemoPatient::passphrase);
const QString hub = QString::fromLatin1(screens::DemoPatient::hub);

}  // namespace

TEST_CASE("a passphrase that is short, or not the same twice, makes no diary and says why", "[diary][lock]")
{
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    auto& board = *program->locking();
    REQUIRE(board.isFresh());

    board.create(QStringLiteral("fourteen chars"), QStringLiteral("fourteen chars"));
    CHECK(board.problem().startsWith(QLatin1String("Use at least 15 letters.")));

    board.create(passphrase, passphrase + QLatin1Char('s'));
    CHECK(board.problem().isEmpty());
    CHECK(board.repeatProblem() == QLatin1String("These two are not the same."));

    CHECK(board.isFresh());
    CHECK_FALSE(program->home().isOpen());
    CHECK(program->page() == Page::lock);
}

TEST_CASE("a diary that was made opens with its passphrase and with no other", "[diary][lock]")
{
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    auto& board = *program->locking();
    board.create(passphrase, passphrase);
    REQUIRE(program->home().isOpen());
    CHECK(program->page() == Page::join);

    program->lock();
    CHECK(program->page() == Page::lock);
    CHECK_FALSE(board.isFresh());
    board.unlock(QStringLiteral("three calm herons wave"));
    CHECK(board.problem() == QLatin1String("That passphrase does not open the diary. Try again."));
    CHECK_FALSE(program->home().isOpen());

    board.unlock(passphrase);
    CHECK(program->home().isOpen());
    CHECK(board.problem().isEmpty());
}

TEST_CASE("who guesses again and again must wait, and is told how long", "[diary][lock]")
{
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    auto& board = *program->locking();
    board.create(passphrase, passphrase);
    program->lock();

    for (int i = 0; i < 12 && !board.problem().startsWith(QLatin1String("Too many tries.")); ++i)
        board.unlock(QStringLiteral("a guess, number %1").arg(i));

    CHECK(board.problem().startsWith(QLatin1String("Too many tries. Please wait ")));
    board.unlock(passphrase);
    CHECK_FALSE(program->home().isOpen());
    patient.clock().advance(std::chrono::hours(24));
    board.unlock(passphrase);
    CHECK(program->home().isOpen());
}

TEST_CASE("a typed code leads to the number, the number to the plan, and the plan to the day", "[diary][join]")
{
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    program->locking()->create(passphrase, passphrase);
    auto& board = *program->joining();

    board.useText(patient.showsCode(), hub);
    board.poll();
    CHECK(board.stage() == JoinBoard::Stage::Waiting);

    patient.looks();
    board.poll();
    REQUIRE(board.stage() == JoinBoard::Stage::Compare);
    CHECK(board.number().remove(QLatin1Char(' ')) == patient.number());
    CHECK_FALSE(program->home().diary().linked());

    patient.confirms();
    board.poll();
    CHECK(board.stage() == JoinBoard::Stage::Arriving);
    CHECK(program->home().diary().linked());
    CHECK(program->page() == Page::join);

    patient.sends();
    board.poll();
    CHECK(board.stage() == JoinBoard::Stage::Joined);
    CHECK(program->page() == Page::today);
}

TEST_CASE("the code is taken as people type it: small letters, spaces, no dashes", "[diary][join]")
{
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    program->locking()->create(passphrase, passphrase);

    program->joining()->useText(QLatin1Char(' ') + patient.showsCode().toLower().replace(QLatin1Char('-'), QLatin1Char(' ')), hub);

    CHECK(program->joining()->problem().toStdString() == "");
    CHECK(program->joining()->stage() == JoinBoard::Stage::Waiting);
}

TEST_CASE("a code that cannot be right is refused before anything is sent", "[diary][join]")
{
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    program->locking()->create(passphrase, passphrase);
    auto& board = *program->joining();

    board.useText(QStringLiteral("ABCD-EFGH"), hub);
    CHECK(board.problem() == QLatin1String("This code can not be read. Check each letter."));
    CHECK(board.stage() == JoinBoard::Stage::Code);

    board.useText(patient.showsCode(), {});
    CHECK(board.problem() == QLatin1String("A typed code also needs the address under it."));
    CHECK(board.stage() == JoinBoard::Stage::Code);
}

TEST_CASE("without a network joining says so, keeps trying, and goes on when it is back", "[diary][join]")
{
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    program->locking()->create(passphrase, passphrase);
    auto& board = *program->joining();
    const QString code = patient.showsCode();

    patient.setOffline(true);
    board.useText(code, hub);
    CHECK(board.problem().startsWith(QLatin1String("The clinic's address does not answer.")));
    CHECK(board.problem().endsWith(QLatin1String("The diary keeps trying.")));
    CHECK(board.stage() == JoinBoard::Stage::Waiting);

    patient.setOffline(false);
    board.poll();
    board.poll();
    patient.looks();
    board.poll();
    CHECK(board.problem().isEmpty());
    CHECK(board.stage() == JoinBoard::Stage::Compare);
}

TEST_CASE("a code that ran out is said to be over, and another can be typed", "[diary][join]")
{
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    program->locking()->create(passphrase, passphrase);
    auto& board = *program->joining();
    const QString code = patient.showsCode();
    patient.clock().advance(std::chrono::minutes(11));

    board.useText(code, hub);
    board.poll();

    CHECK(board.problem() == QLatin1String("This code is over. Ask your clinic for a new one."));
    CHECK(board.stage() == JoinBoard::Stage::Code);
    board.useText(patient.showsCode(), hub);
    CHECK(board.problem().isEmpty());
    CHECK(board.stage() == JoinBoard::Stage::Waiting);
}

TEST_CASE("starting over, or locking, forgets the number and links nothing", "[diary][join]")
{
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    program->locking()->create(passphrase, passphrase);
    auto& board = *program->joining();
    const auto compare = [&] {
        board.useText(patient.showsCode(), hub);
        board.poll();
        patient.looks();
        board.poll();
        REQUIRE(board.stage() == JoinBoard::Stage::Compare);
    };

    compare();
    board.startOver();
    CHECK(board.stage() == JoinBoard::Stage::Code);
    CHECK(board.number().isEmpty());

    compare();
    program->lock();
    CHECK(board.stage() == JoinBoard::Stage::Code);
    program->locking()->unlock(passphrase);
    CHECK_FALSE(program->home().diary().linked());
}

TEST_CASE("whom to call is there before joining, after it, and while the diary is locked", "[diary][call]")
{
    screens::DemoPatient patient;
    {
        auto fresh = patient.program(QStringLiteral("en"));
        fresh->openCall();
        fresh->warning()->setRegion(QLocale::Germany);
        REQUIRE(fresh->warning()->calls().size() == 1);
        CHECK(fresh->warning()->calls().first().number == QLatin1String("112"));
        CHECK(fresh->warning()->calls().first().title.contains(QLatin1String("European Union")));
        fresh->back();
        CHECK(fresh->page() == Page::lock);
    }
    auto program = patient.joined(QStringLiteral("en"));
    const auto numbers = [&] {
        QStringList found;
        for (const auto& call : program->warning()->calls())
            found << call.number;
        return found;
    };
    const QStringList all{"+00 555 0100", "+00 555 0199", "112"};
    program->openCall();
    CHECK(numbers() == all);

    program->lock();
    program->openCall();
    CHECK(program->page() == Page::call);
    CHECK(numbers() == all);
    CHECK(program->warning()->clinicName() == QLatin1String("Practice at the Quay"));
    program->back();
    CHECK(program->page() == Page::lock);
}

namespace {

/// As far as the page that says that the plan is on its way.
std::unique_ptr<app::DiaryProgram> confirmed(screens::DemoPatient& patient)
{
    auto program = patient.program(QStringLiteral("en"));
    program->locking()->create(passphrase, passphrase);
    program->joining()->useText(patient.showsCode(), hub);
    program->joining()->poll();
    patient.looks();
    program->joining()->poll();
    patient.confirms();
    program->joining()->poll();
    REQUIRE(program->joining()->stage() == JoinBoard::Stage::Arriving);
    return program;
}

}  // namespace

TEST_CASE("a plan that was on its way arrives although the diary locked or died in between", "[diary][join][safety]")
{
    screens::DemoPatient patient;
    auto program = confirmed(patient);
    if (GENERATE(true, false)) {
        program->lock();
    } else {
        program.reset();
        program = patient.program(QStringLiteral("en"));
    }
    program->locking()->unlock(passphrase);
    CHECK(program->page() == Page::join);
    REQUIRE(program->joining()->stage() == JoinBoard::Stage::Arriving);

    patient.sends();
    program->joining()->poll();
    CHECK(program->joining()->stage() == JoinBoard::Stage::Joined);
    CHECK(program->page() == Page::today);
}

TEST_CASE("a plan that waits at the hub is there as soon as the diary opens", "[diary][join]")
{
    screens::DemoPatient patient;
    auto program = confirmed(patient);
    program->lock();
    patient.sends();
    program->locking()->unlock(passphrase);
    CHECK(program->page() == Page::today);
}

TEST_CASE("while the plan is on its way nothing starts over, and a network that is not there is said", "[diary][join]")
{
    screens::DemoPatient patient;
    auto program = confirmed(patient);
    program->joining()->startOver();
    CHECK(program->joining()->stage() == JoinBoard::Stage::Arriving);
    patient.setOffline(true);
    program->joining()->poll();
    CHECK(program->joining()->problem() == QLatin1String("No network right now. The diary keeps trying."));
    CHECK(program->joining()->stage() == JoinBoard::Stage::Arriving);
    patient.setOffline(false);
    program->joining()->poll();
    CHECK(program->joining()->problem().isEmpty());
}

TEST_CASE("language and text size are in reach before joining, and lead back to it", "[diary][join]")
{
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    program->locking()->create(passphrase, passphrase);
    program->joining()->useText(patient.showsCode(), hub);
    program->openSettings();
    CHECK(program->page() == Page::settings);
    program->back();
    CHECK(program->page() == Page::join);
    CHECK(program->joining()->stage() == JoinBoard::Stage::Waiting);
    program->openCall();
    program->back();
    CHECK(program->page() == Page::join);
    CHECK(program->joining()->stage() == JoinBoard::Stage::Waiting);
}

TEST_CASE("a phone that has just joined hears of the clinic without a save and without a lock", "[diary][join]")
{
    screens::DemoPatient patient;
    patient.setSyncEvery(std::chrono::milliseconds(30));
    auto program = patient.joined(QStringLiteral("en"));
    REQUIRE(program->page() == Page::today);
    patient.writes("Welcome home.");
    CHECK(screens::DemoPatient::waits([&] { return !program->today()->unread().isEmpty(); }));
}
