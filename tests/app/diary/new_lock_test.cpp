// A lock chosen with a numb hand: to read what one types, to be told what is missing, or to have one drawn.
#include "app/diary/model/secret_sight.h"
#include "core/vault/drawn_passphrase.h"
#include "tests/app/held_measure.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QGuiApplication>
#include <QTemporaryDir>

using namespace ebbline;
using diaryapp::SecretSight;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

/// As somebody reads two groups off the paper.
QString groupsOf(const QString& paper, const std::array<int, 2>& groups)
{
    const QStringList all = paper.split(QLatin1Char('-'));
    return all.at(groups[0] - 1) + QLatin1Char(' ') + all.at(groups[1] - 1);
}

}  // namespace

TEST_CASE("what is typed goes out of sight when the program goes to the background", "[diary][lock][security]")
{
    const auto state = GENERATE(Qt::ApplicationInactive, Qt::ApplicationHidden, Qt::ApplicationSuspended);
    SecretSight sight;
    CHECK_FALSE(sight.isShown());
    sight.setShown(true);
    Q_EMIT qGuiApp->applicationStateChanged(Qt::ApplicationActive);
    CHECK(sight.isShown());
    Q_EMIT qGuiApp->applicationStateChanged(state);
    CHECK_FALSE(sight.isShown());
    Q_EMIT qGuiApp->applicationStateChanged(Qt::ApplicationActive);
    CHECK_FALSE(sight.isShown());
}

TEST_CASE("a new passphrase is told in words what it still lacks", "[diary][lock]")
{
    DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    SecretSight sight;
    CHECK(sight.meter().startsWith(QLatin1String("Use at least 15 letters.")));
    sight.weigh(QStringLiteral("three calm"));
    CHECK(sight.meter() == QLatin1String("5 letters more."));
    sight.weigh(QStringLiteral("three calm her"));
    CHECK(sight.meter() == QLatin1String("1 letter more."));
    sight.weigh(QStringLiteral("three calm hero"));
    CHECK(sight.meter() == QLatin1String("Long enough."));
    sight.weigh(QStringLiteral("121212121212121212"));
    CHECK(sight.meter() == QLatin1String("Long enough. But a few letters, again and again, are easy to guess."));
    sight.weigh({});
    CHECK(sight.meter().startsWith(QLatin1String("Use at least 15 letters.")));
}

TEST_CASE("a diary that drew its passphrase opens with what is on the paper, as people type it", "[diary][lock]")
{
    DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    auto& board = *program->locking();
    CHECK(board.drawn().isEmpty());
    board.askBack();  // none is drawn
    CHECK_FALSE(board.isAsking());
    board.createDrawn({});
    CHECK_FALSE(program->home().isOpen());
    board.draw();
    const QString first = board.drawn();
    board.draw();
    const QString paper = board.drawn();
    CHECK(first != paper);
    CHECK(paper.size() == 19);

    // A part of it, from the paper, before it locks anything.
    board.createDrawn(paper);
    CHECK_FALSE(program->home().exists());
    CHECK(board.askedText().isEmpty());
    board.askBack();
    REQUIRE(board.isAsking());
    const auto groups = board.askedGroups();
    CHECK((groups[0] >= 1 && groups[0] < groups[1] && groups[1] <= 4));
    CHECK(board.askedText() == QStringLiteral("From your paper: group %1 and group %2").arg(groups[0]).arg(groups[1]));
    for (const QString& wrong : {QString(), paper.left(9).toLower() + QStringLiteral("x"), first, groupsOf(paper, {groups[1], groups[0]}), paper.section(QLatin1Char('-'), groups[0] - 1, groups[0] - 1)}) {
        CAPTURE(wrong.toStdString());
        board.createDrawn(wrong);
        CHECK_FALSE(program->home().exists());
        CHECK(board.problem() == QLatin1String("That is not what was drawn. Look at your paper again. If it is not there, show it once more."));
    }
    board.showDrawn();
    CHECK_FALSE(board.isAsking());
    CHECK(board.problem().isEmpty());
    CHECK(board.drawn() == paper);
    board.askBack();
    board.createDrawn(groupsOf(paper, board.askedGroups()).toLower());
    REQUIRE(program->home().isOpen());
    CHECK(program->page() == Page::join);
    CHECK(board.drawn().isEmpty());  // not shown again

    for (const QString& typed : {paper, paper.toLower(), QString(paper).remove(QLatin1Char('-')), QString(paper).replace(QLatin1Char('-'), QLatin1Char(' ')).toLower()}) {
        CAPTURE(typed.toStdString());
        program->lock();
        board.unlock(typed);
        REQUIRE(program->home().isOpen());
        CHECK(program->home().prove(bytes::viewOf(typed.toStdString())));
    }
    program->lock();
    board.unlock(first);
    CHECK_FALSE(program->home().isOpen());
    CHECK(board.problem() == QLatin1String("That passphrase does not open the diary. Try again."));
    // Where there is a diary, none is drawn.
    board.draw();
    CHECK(board.drawn().isEmpty());
}

TEST_CASE("the diary answers while the cost of a passphrase is measured, and what was stopped writes nothing", "[diary][lock]")
{
    DemoPatient patient;
    tests::HeldMeasure held;
    QTemporaryDir place;
    diaryapp::Home home(std::filesystem::path(place.path().toStdString()) / "vault", patient.clock(), patient.zone(), std::nullopt, {}, nullptr, held.measure());
    diaryapp::LockBoard board(home);
    diaryapp::KeysBoard keys(home);
    const QString own = QString::fromLatin1(DemoPatient::passphrase);
    board.create(own, own);
    REQUIRE(board.isWorking());
    CHECK(board.doing().startsWith(QLatin1String("One moment.")));
    CHECK_FALSE(home.exists());
    board.stop();
    CHECK_FALSE(board.isWorking());
    CHECK(board.doing().isEmpty());

    board.draw();
    const QString paper = board.drawn();
    board.askBack();
    board.createDrawn(paper);  // all of it proves as much
    board.createDrawn(paper);
    REQUIRE(board.isWorking());
    REQUIRE(tests::HeldMeasure::waitFor([&] { return held.begun() == 1; }));
    CHECK_FALSE(home.exists());
    held.letEnd();
    REQUIRE(tests::HeldMeasure::waitFor([&] { return home.isOpen(); }));
    CHECK(held.wasAside());
    CHECK_FALSE(board.isWorking());
    // Measured once: what follows does not wait for it.
    keys.makeCode(paper);
    CHECK_FALSE(keys.code().isEmpty());
    CHECK(held.begun() == 1);
    CHECK_FALSE(home.prove(bytes::viewOf(own.toStdString())));
}

TEST_CASE("a diary that is locked while a new code still waits keeps the old one", "[diary][lock]")
{
    DemoPatient patient;
    QTemporaryDir place;
    const auto folder = std::filesystem::path(place.path().toStdString()) / "vault";
    const QString own = QString::fromLatin1(DemoPatient::passphrase);
    QString code;
    {
        diaryapp::Home home(folder, patient.clock(), patient.zone(), tests::HeldMeasure::cost, {});
        diaryapp::LockBoard board(home);
        diaryapp::KeysBoard keys(home);
        board.create(own, own);
        keys.makeCode(own);
        code = keys.code();
        REQUIRE_FALSE(code.isEmpty());
    }
    tests::HeldMeasure held;
    diaryapp::Home home(folder, patient.clock(), patient.zone(), std::nullopt, {}, nullptr, held.measure());
    diaryapp::LockBoard board(home);
    diaryapp::KeysBoard keys(home);
    board.unlock(own);
    REQUIRE(home.isOpen());
    CHECK(held.begun() == 0);  // opening measures nothing
    keys.makeCode(own);
    REQUIRE(keys.isWorking());
    home.lock();
    CHECK_FALSE(keys.isWorking());
    held.letEnd();
    board.useCode(true);
    board.recover(code, QStringLiteral("five herons in the reeds"), QStringLiteral("five herons in the reeds"));
    REQUIRE(tests::HeldMeasure::waitFor([&] { return home.isOpen(); }));
    CHECK(held.begun() == 1);
    CHECK(keys.code().isEmpty());
}

TEST_CASE("a drawn passphrase can be changed to one's own, renewed with a code, and given up", "[diary][lock]")
{
    DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    program->locking()->draw();
    program->locking()->chooseOwn();
    CHECK(program->locking()->drawn().isEmpty());
    program->locking()->draw();
    const QString paper = program->locking()->drawn();
    program->locking()->askBack();
    program->locking()->createDrawn(groupsOf(paper, program->locking()->askedGroups()));
    program->keys()->makeCode(paper.toLower());
    CHECK_FALSE(program->keys()->code().isEmpty());
    const QString own = QString::fromLatin1(DemoPatient::passphrase);
    program->keys()->change(paper.toLower(), own, own);
    CHECK(program->keys()->oldProblem().isEmpty());
    program->lock();
    program->locking()->unlock(paper);
    CHECK_FALSE(program->home().isOpen());
    program->locking()->unlock(own);
    CHECK(program->home().isOpen());
}

TEST_CASE("who lost passphrase and code is told what is left at her own touch, and nothing is wiped by it", "[diary][lock]")
{
    const QString words = QStringLiteral("Try again first. Without passphrase and code this diary stays closed. You can join anew on another device, or on this one once "
                                         "the data of this app is deleted: your clinic shows a new code. Taking the app off may not delete its data. The entries you sent "
                                         "come back. Photographs stay with your clinic. What was not sent is lost.");
    DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    auto& board = *program->locking();
    CHECK(board.bothLost().isEmpty());
    const QString passphrase = QString::fromLatin1(DemoPatient::passphrase);
    board.create(passphrase, passphrase);
    program->lock();
    CHECK(board.bothLost().isEmpty());

    // No code was made. A passphrase that does not open it, or comes too soon, says nothing of a loss.
    for (int guess = 0; guess < 8; ++guess)
        board.unlock(QStringLiteral("three calm swans wade"));
    CHECK(board.bothLost().isEmpty());
    CHECK(board.isLostOffered());
    board.tellLost();
    CHECK(board.bothLost() == words);
    CHECK(program->home().exists());
    patient.clock().advance(std::chrono::hours(1));
    board.unlock(passphrase);
    REQUIRE(program->home().isOpen());

    // There is one: said where it is asked for.
    program->keys()->makeCode(passphrase);
    program->lock();
    board.unlock(QStringLiteral("three calm swans wade"));
    board.tellLost();  // the code comes first
    CHECK(board.bothLost().isEmpty());
    board.useCode(true);
    CHECK(board.bothLost().isEmpty());
    board.tellLost();
    CHECK(board.bothLost() == words);
    board.useCode(false);
    CHECK(board.bothLost().isEmpty());
}
