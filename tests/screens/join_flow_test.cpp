// A clinic's code that came as a picture, on the real page: the question where she is, its answers, and the ways back.
#include "tests/screens/complaints.h"
#include "tests/screens/diary_hands.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/generators/catch_generators_range.hpp>

#include <QTest>

using namespace ebbline;
using diaryapp::JoinBoard;
using screens::DemoPatient;
using screens::hands;
using screens::said;

TEST_CASE("a patient with a picture of a code says first whether she is at her clinic, with each kind of hands", "[diary][flows]")
{
    const auto [kind, language] = GENERATE(from_range(screens::waysWithReturn));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.program(QString::fromLatin1(language));
    program->locking()->create(QString::fromLatin1(DemoPatient::passphrase), QString::fromLatin1(DemoPatient::passphrase));
    screens::open(*program);
    auto& window = *program->window();
    auto& board = *program->joining();
    const auto act = hands(kind, window);
    const QUrl picture = patient.showsPicture();
    const auto asked = [&] {
        board.usePicture(picture);
        screens::settle(window);
        REQUIRE(board.stage() == JoinBoard::Stage::Place);
        CHECK(screens::spoken(window, said("JoinPage", "Are you at your clinic now?")) != nullptr);
        CHECK(screens::named(window, said("JoinPage", "Use this code")) == nullptr);
    };
    const auto askedNoMore = [&] {
        screens::settle(window);
        CHECK(board.stage() == JoinBoard::Stage::Code);
        CHECK(screens::named(window, said("JoinPage", "Yes, I am there")) == nullptr);
        CHECK(screens::named(window, said("TopLine", "Back")) == nullptr);
        CHECK(screens::named(window, said("JoinPage", "Use this code")) != nullptr);
    };

    asked();
    REQUIRE(act.use(said("JoinPage", "No")));
    askedNoMore();
    CHECK(screens::spoken(window, board.outcome()) != nullptr);
    asked();
    REQUIRE(act.use(said("TopLine", "Back")));
    askedNoMore();
    for (const auto key : {Qt::Key_Escape, Qt::Key_Back}) {
        asked();
        QTest::keyClick(&window, key);
        askedNoMore();
    }
    CHECK_FALSE(program->home().diary().linked());

    asked();
    REQUIRE(act.use(said("JoinPage", "Yes, I am there")));
    board.poll();
    patient.looks();
    board.poll();
    CHECK(board.stage() == JoinBoard::Stage::Compare);
    CHECK(ear.take() == "");
}
