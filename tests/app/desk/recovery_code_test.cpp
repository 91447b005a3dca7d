// The recovery code of a desk: read back from its paper, gone with its page, and used at the door.
#include "tests/app/desk/keeping.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using screens::Keeping;

TEST_CASE("a recovery code goes only once a group of it was read back from the paper, and can be shown again until then", "[desk][keep]")
{
    Keeping at;
    at.board().askBack();  // nothing to ask for
    CHECK_FALSE(at.board().isAsking());
    at.board().makeCode(at.words);
    at.wait();
    const QString code = at.board().code();
    const auto group = [&] { return code.section(QLatin1Char('-'), at.board().askedGroup() - 1, at.board().askedGroup() - 1); };
    at.board().readBack(code);  // not asked yet
    REQUIRE(at.board().code() == code);

    at.board().askBack();
    REQUIRE(at.board().isAsking());
    CHECK(at.board().askedText() == QStringLiteral("From the paper: group %1 of 9").arg(at.board().askedGroup()));
    for (const QString& wrong : {QString(), QStringLiteral("2222"), group().chopped(1)}) {
        at.board().readBack(wrong);
        CHECK(at.board().isAsking());
        CHECK(at.board().askedProblem().startsWith(QLatin1String("That is not this group.")));
        CHECK(at.board().code() == code);
    }
    at.board().showCode();
    CHECK_FALSE(at.board().isAsking());
    CHECK(at.board().code() == code);
    CHECK(at.board().askedProblem().isEmpty());
    at.board().askBack();
    at.board().readBack(group().toLower());
    CHECK_FALSE(at.board().isAsking());
    CHECK(at.board().code().isEmpty());
    CHECK(at.board().outcome() == QLatin1String("Keep the paper where only the clinic finds it, not beside this computer."));
    at.program->openQueue();
    CHECK(at.program->notice().isEmpty());
}

TEST_CASE("who leaves a recovery code at the desk before it was read back is told that it is gone, also another person", "[desk][keep]")
{
    Keeping at;
    const auto gone = QLatin1String("The recovery code is not shown any more. If it is not on paper, make a new one.");
    at.board().makeCode(at.words);
    at.wait();
    at.board().askBack();
    at.program->openQueue();
    CHECK(at.board().code().isEmpty());
    CHECK_FALSE(at.board().isAsking());
    CHECK(at.program->notice() == gone);

    at.program->dismissNotice();
    at.program->openKeep();
    at.board().makeCode(at.words);
    at.wait();
    REQUIRE_FALSE(at.board().code().isEmpty());
    at.program->choosePerson(QStringLiteral("Ilan Osei"));
    CHECK(at.board().code().isEmpty());
    CHECK(at.program->notice() == gone);
}

TEST_CASE("a recovery code is gone when the page is left, and opens the vault all the same", "[desk][keep]")
{
    Keeping at;
    CHECK(at.board().codeState().contains(QLatin1String("no recovery code")));
    at.board().makeCode(QStringLiteral("not the passphrase"));
    at.wait();
    CHECK(at.board().code().isEmpty());
    CHECK_FALSE(at.board().problem().isEmpty());
    at.clinic.clock().advance(std::chrono::minutes(1));
    at.board().makeCode(at.words);
    at.wait();
    const auto code = at.board().code();
    REQUIRE(vault::RecoveryCode::fromText(code.toStdString()));
    CHECK_FALSE(at.board().codeState().contains(QLatin1String("no recovery code")));

    at.program->openQueue();
    at.program->openKeep();
    CHECK(at.board().code().isEmpty());
    const auto read = vault::RecoveryCode::fromText(code.toStdString());
    CHECK(vault::openDataKey(at.clinic.folder(), vault::Offered::recoveryCode(*read), at.clinic.clock().readings()));
}

TEST_CASE("the recovery code sets a new passphrase at the door, and a wrong one says so", "[desk][keep]")
{
    Keeping at;
    auto& door = *at.program->unlocking();
    CHECK_FALSE(door.isCodeOffered());
    at.board().makeCode(at.words);
    at.wait();
    const auto code = at.board().code();
    at.program->lock();
    REQUIRE(door.isCodeOffered());
    door.useCode(true);
    REQUIRE(door.isRecovering());

    const auto fresh = QStringLiteral("lanterns over the harbour");
    CHECK_FALSE(door.recover(code.left(20), fresh, fresh));
    CHECK(door.problem().contains(QLatin1String("nine groups")));
    CHECK_FALSE(door.recover(code, fresh, QStringLiteral("other")));
    const auto other = QString::fromStdString(vault::RecoveryCode::random().text());
    CHECK_FALSE(door.recover(other, fresh, fresh));
    CHECK(door.problem().contains(QLatin1String("does not open")));
    at.clinic.clock().advance(std::chrono::minutes(1));

    CHECK(door.recover(code, fresh, fresh));
    CHECK(at.program->isOpen());
    CHECK_FALSE(at.opens(at.words));
    at.clinic.clock().advance(std::chrono::minutes(1));
    CHECK(at.opens(fresh));
}
