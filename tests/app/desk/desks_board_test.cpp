// Several desks over one clinic, as people at two computers do it: invite, compare, join, shut out.
#include "tests/core/desk/clinic_world.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QCoreApplication>

using namespace ebbline;

namespace {

struct TwoComputers {
    screens::DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> first = clinic.program(QStringLiteral("en"), clinic.hub());
    std::unique_ptr<app::DeskProgram> second = clinic.freshProgram(QStringLiteral("en"), clinic.hub());

    TwoComputers()
    {
        REQUIRE(second->workplace().create(bytes::viewOf("another clinic computer"), test::cheap));
        REQUIRE(second->page() == app::DeskProgram::Page::clinic);
        first->openDeskPairing();
        REQUIRE(first->page() == app::DeskProgram::Page::pairing);
    }

    static QString passphrase() { return QString::fromLatin1(screens::DemoClinic::passphrase); }
    deskapp::PairingBoard& inviting() { return *first->pairing(); }
    deskapp::ApplyBoard& applying() { return *second->applying(); }

    void meet()
    {
        inviting().start(passphrase(), 0);
        REQUIRE(inviting().isCodeShown());
        second->openApply();
        REQUIRE(second->page() == app::DeskProgram::Page::apply);
        applying().start(inviting().typedCode(), QStringLiteral("http://127.0.0.1:1"));
        for (int i = 0; i < 4; ++i) {
            applying().poll();
            inviting().poll();
        }
    }
    void join(bool owner = false)
    {
        inviting().setOwner(owner);
        meet();
        inviting().confirm();
        applying().poll();
        REQUIRE(applying().isJoined());
    }
    void everybodyAsks()
    {
        for (int i = 0; i < 3; ++i) {
            first->hub()->syncNow();
            second->hub()->syncNow();
        }
    }
    static deskapp::DeskRow row(app::DeskProgram& program, int place)
    {
        return program.desks()->desks()->rows()[place].value.value<deskapp::DeskRow>();
    }
};

}  // namespace

TEST_CASE("a second desk joins by a code and six digits, and has what the first one has", "[desk][desks]")
{
    TwoComputers room;
    CHECK(room.inviting().hubAddress().contains(QLatin1String("127.0.0.1:1")));
    room.meet();
    REQUIRE(room.inviting().isComparing());
    CHECK(room.applying().number() == room.inviting().number());
    CHECK(room.applying().number().size() == 7);

    room.inviting().confirm();
    room.applying().poll();

    REQUIRE(room.applying().isJoined());
    CHECK(room.inviting().isLinked());
    room.everybodyAsks();
    CHECK(room.applying().isReady());
    CHECK(room.second->workplace().desk().courses().size() == room.first->workplace().desk().courses().size());
    room.second->openDesks();
    CHECK(room.second->desks()->desks()->rowCount() == 2);
    CHECK_FALSE(room.second->desks()->isOwner());
    // Without the root key it neither invites a desk nor links a phone.
    room.second->openDeskPairing();
    CHECK_FALSE(room.second->pairing()->blocked().isEmpty());
    CHECK_FALSE(room.second->applying()->mayJoin());
}

TEST_CASE("a desk that is shut out gets nothing new, and its number for the hub is shown", "[desk][desks]")
{
    TwoComputers room;
    room.join();
    room.everybodyAsks();
    room.first->openDesks();
    auto& desks = *room.first->desks();
    REQUIRE(desks.desks()->rowCount() == 2);
    const int lost = TwoComputers::row(*room.first, 0).removable ? 0 : 1;
    const auto id = TwoComputers::row(*room.first, lost).id;
    CHECK_FALSE(TwoComputers::row(*room.first, 1 - lost).removable);

    desks.askRemove(TwoComputers::row(*room.first, 1 - lost).id);
    CHECK_FALSE(desks.isAsking());  // never this one
    desks.askRemove(id);
    REQUIRE(desks.isAsking());
    desks.cancel();
    CHECK(desks.desks()->rowCount() == 2);
    desks.askRemove(id);
    // Not without the passphrase, not with another one, and not alone.
    desks.decide(QString(), 0);
    CHECK(desks.isAsking());
    CHECK_FALSE(desks.problem().isEmpty());
    desks.decide(QStringLiteral("another sea altogether"), 0);
    CHECK(desks.isAsking());
    REQUIRE(desks.seconds().size() == 1);
    CHECK(desks.seconds().front() != QString::fromStdString(room.first->workplace().desk().person()));
    desks.decide(TwoComputers::passphrase());
    CHECK(desks.isAsking());
    CHECK(desks.desks()->rowCount() == 2);
    desks.decide(TwoComputers::passphrase(), 0);

    CHECK(desks.desks()->rowCount() == 1);
    CHECK(desks.outcome().contains(id));
    REQUIRE(desks.ended().size() == 1);
    CHECK(desks.ended().front().contains(QLatin1String("has not been told yet")));
    room.first->hub()->syncNow();
    CHECK(desks.ended().front().contains(QLatin1String("refuses it")));
    REQUIRE(room.first->workplace().desk().registerPatient("Ada Quill", "+00 555 0177", "en"));
    const auto before = room.second->workplace().desk().patients().size();
    room.everybodyAsks();
    CHECK(room.second->workplace().desk().patients().size() == before);
}

TEST_CASE("a fresh key asks first, and only an owner's desk may begin one", "[desk][desks]")
{
    TwoComputers room;
    room.join();
    const auto epoch = room.first->workplace().desk().vault().epochNumber();
    room.first->openDesks();
    room.first->desks()->askFreshKey();
    CHECK(room.first->workplace().desk().vault().epochNumber() == epoch);
    room.first->desks()->decide(TwoComputers::passphrase());
    CHECK(room.first->workplace().desk().vault().epochNumber() == epoch + 1);

    room.second->openDesks();
    room.second->desks()->askFreshKey();
    room.second->desks()->decide(QStringLiteral("another clinic computer"));
    CHECK_FALSE(room.second->desks()->outcome().isEmpty());
    CHECK(room.second->workplace().desk().vault().epochNumber() <= epoch + 1);
}

TEST_CASE("an owner's second desk may do everything", "[desk][desks]")
{
    TwoComputers room;
    room.join(true);
    room.everybodyAsks();
    CHECK(room.second->workplace().desk().isOwner());
    room.second->openDeskPairing();
    CHECK(room.second->pairing()->blocked().toStdString() == "");
}

TEST_CASE("what is mistyped is said at once, and nothing is joined", "[desk][desks][errors]")
{
    TwoComputers room;
    room.inviting().start(TwoComputers::passphrase(), 0);
    room.second->openApply();
    auto code = room.inviting().typedCode();
    auto& board = room.applying();

    board.start(code, QString());
    CHECK(board.problem().contains(QLatin1String("address")));
    code[3] = code[3] == QLatin1Char('A') ? QLatin1Char('B') : QLatin1Char('A');
    board.start(code, QStringLiteral("http://127.0.0.1:1"));
    CHECK(board.problem().contains(QLatin1String("letter by letter")));
    CHECK(board.isTyping());
    CHECK_FALSE(board.isJoined());

    // A clinic of its own: it never joins another.
    room.first->openApply();
    CHECK(room.first->page() == app::DeskProgram::Page::pairing);
}

TEST_CASE("a code that two desks used joins neither", "[desk][desks][errors]")
{
    TwoComputers room;
    room.meet();
    const auto code = room.inviting().typedCode();
    CHECK(code.isEmpty());  // it is gone from the screen once somebody answered
    room.inviting().again();
    room.inviting().start(TwoComputers::passphrase(), 0);
    const auto seen = room.inviting().typedCode();
    auto third = std::make_unique<app::DeskProgram>(app::DeskSetup{.folder = room.clinic.folder().parent_path() / "third", .clock = room.clinic.clock(),
                                                                   .zone = room.clinic.zone(), .courier = room.clinic.hub(),
                                                                   .cost = test::cheap, .language = QStringLiteral("en")});
    REQUIRE(third->workplace().create(bytes::viewOf("a third computer here"), test::cheap));
    for (auto* program : {room.second.get(), third.get()}) {
        program->applying()->start(seen, QStringLiteral("http://127.0.0.1:1"));
        for (int i = 0; i < 3; ++i) {
            program->applying()->poll();
        }
    }
    room.inviting().poll();
    QCoreApplication::processEvents();
    CHECK(room.inviting().isAlarming());
    room.inviting().confirm();
    CHECK(room.first->workplace().desk().desks().size() == 1);
    CHECK(third->applying()->problem().contains(QLatin1String("Somebody else")));
}
