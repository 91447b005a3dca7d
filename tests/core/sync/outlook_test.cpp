// How it stands with the other end: every state, its first moment, and which of two is the graver.

#include "core/sync/outlook.h"
#include "tests/core/desk/clinic_world.h"

using namespace ebbline;
using namespace std::chrono_literals;
using sync::Outlook;
using State = Outlook::State;

namespace {

bool isPull(const mailbox::Request& request) { return request.method == "GET" && request.path.starts_with("/v1/m/"); }

struct Pair {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);
    envelope::MailboxId mailbox = phone.link()->mailbox;

    Pair() { world.syncDesk(); }  // the phone's acknowledgement of its course
    void record() { REQUIRE(phone.record(world.entryOf(phone, 3, 2))); }
    Outlook atPhone() { return *sync::outlookOf(phone.vault(), mailbox); }
    Outlook atDesk() { return *sync::outlookOf(world.desk.vault(), mailbox); }
    void there() { world.syncPhone(phone); }
    void andBack()
    {
        world.syncDesk();
        world.syncPhone(phone);
    }
};

}  // namespace

TEST_CASE("after joining all is delivered on both sides, and each was heard", "[outlook]")
{
    Pair pair;
    for (const Outlook& outlook : {pair.atPhone(), pair.atDesk()}) {
        CHECK(outlook.state == State::delivered);
        CHECK_FALSE(outlook.waitingSince);
        CHECK(outlook.heardAt == pair.world.clock.now());
        CHECK_FALSE(outlook.unheard);
    }
}

TEST_CASE("an entry waits since it was written, with no network at all", "[outlook]")
{
    Pair pair;
    pair.world.clock.advance(1h);
    const auto written = pair.world.clock.now();
    pair.record();
    pair.world.clock.advance(2h);
    pair.record();
    CHECK(pair.atPhone().state == State::waiting);
    CHECK(pair.atPhone().waitingSince == written);
}

TEST_CASE("what the hub took waits on, until the clinic's device has acknowledged it", "[outlook]")
{
    Pair pair;
    const auto written = pair.world.clock.now();
    pair.record();
    pair.there();
    pair.world.clock.advance(3h);
    CHECK(pair.atPhone().state == State::waiting);
    CHECK(pair.atPhone().waitingSince == written);
    pair.world.syncDesk();
    CHECK(pair.atPhone().state == State::waiting);
    pair.there();
    CHECK(pair.atPhone().state == State::delivered);
    CHECK_FALSE(pair.atPhone().waitingSince);
}

TEST_CASE("of several that wait the oldest counts, and an acknowledged one no more", "[outlook]")
{
    Pair pair;
    pair.record();
    pair.there();
    pair.world.clock.advance(1h);
    const auto second = pair.world.clock.now();
    pair.record();
    CHECK(*pair.atPhone().waitingSince == second - 1h);
    pair.world.syncDesk();  // the desk has the first
    pair.there();
    CHECK(pair.atPhone().waitingSince == second);
}

TEST_CASE("a message of the desk waits until the phone has acknowledged it", "[outlook]")
{
    Pair pair;
    pair.world.clock.advance(1h);
    const auto written = pair.world.clock.now();
    REQUIRE(pair.world.desk.writeMessage(pair.course, "Please take your temperature."));
    pair.world.clock.advance(1h);
    CHECK(pair.atDesk().state == State::waiting);
    CHECK(pair.atDesk().waitingSince == written);
    pair.andBack();
    pair.world.syncDesk();
    CHECK(pair.atDesk().state == State::delivered);
}

TEST_CASE("silence shows from twenty-six hours on, not a moment earlier, on both sides", "[outlook]")
{
    Pair pair;
    const auto heard = *pair.atPhone().heardAt;
    REQUIRE(pair.atDesk().heardAt == heard);
    pair.world.clock.set(heard + sync::longestSilence - 1ms);
    CHECK(pair.atPhone().state == State::delivered);
    CHECK(pair.atDesk().state == State::delivered);
    pair.world.clock.advance(1ms);
    CHECK(pair.atPhone().state == State::unheard);
    CHECK(pair.atDesk().state == State::unheard);
    CHECK(pair.atPhone().heardAt == heard);

    // One sign of life each way ends it.
    pair.there();
    pair.andBack();
    CHECK(pair.atPhone().state == State::delivered);
    CHECK(pair.atDesk().state == State::delivered);
}

TEST_CASE("who never answered is unheard since we spoke", "[outlook]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    (void)world.join(course);
    const auto mailbox = world.desk.vault().links()->front().mailbox;  // nothing of the phone was fetched yet
    auto outlook = *sync::outlookOf(world.desk.vault(), mailbox);
    REQUIRE_FALSE(outlook.heardAt);
    CHECK(outlook.state == State::waiting);
    world.clock.advance(sync::longestSilence);
    outlook = *sync::outlookOf(world.desk.vault(), mailbox);
    CHECK(outlook.state == State::unheard);
    CHECK_FALSE(outlook.heardAt);
}

TEST_CASE("silence hides nothing that waits", "[outlook]")
{
    Pair pair;
    pair.record();
    const auto written = pair.world.clock.now();
    pair.world.clock.advance(sync::longestSilence);
    CHECK(pair.atPhone().state == State::unheard);
    CHECK(pair.atPhone().waitingSince == written);
}

TEST_CASE("a clock that was set far back does not pass for news", "[outlook]")
{
    Pair pair;
    pair.world.clock.turnWall(*pair.atPhone().heardAt - sync::longestSilence + 1ms);
    CHECK_FALSE(pair.atPhone().unheard);
    pair.world.clock.turnWall(pair.world.clock.now() - 1ms);
    CHECK(pair.atPhone().unheard);
}

TEST_CASE("what a hub showed before and shows no more is said to be kept back, until it comes", "[outlook]")
{
    Pair pair;
    pair.record();
    pair.there();
    // The hub shows the second message, and then an older copy of itself without either.
    int pulls = 0;
    pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (!isPull(request))
            return;
        if (++pulls > 1)
            return response.body.clear();
        bytes::Reader reader(response.body);
        bytes::Writer last;
        bytes::View piece;
        while (reader.left() > 0)
            piece = reader.block(envelope::maximumEnvelope);
        response.body = last.block(bytes::Bytes(piece.begin(), piece.end())).bytes();
    };
    pair.record();
    pair.there();
    pulls = 0;
    pair.world.syncDesk();
    REQUIRE(pulls == 1);
    CHECK(pair.atDesk().state == State::withheld);
    pair.record();
    pair.there();
    pair.world.syncDesk();
    CHECK(pair.atDesk().state == State::withheld);

    pair.world.courier.tamper = {};
    pair.world.clock.advance(sync::offerAgainAfter + 1min);
    pair.there();
    pair.world.syncDesk();
    CHECK(pair.atDesk().state == State::delivered);
}

TEST_CASE("the graver of two states is the one that is said", "[outlook]")
{
    Pair pair;
    pair.record();
    pair.world.clock.advance(sync::longestSilence);
    auto& vault = pair.phone.vault();
    const auto desk = pair.world.desk.vault().device();
    REQUIRE(pair.atPhone().state == State::unheard);
    REQUIRE(vault.noteAhead(pair.mailbox, desk, 99));
    CHECK(pair.atPhone().state == State::withheld);
    REQUIRE(vault.noteFork(pair.mailbox, desk));
    CHECK(pair.atPhone().state == State::forked);
    REQUIRE(vault.noteRolledBack(pair.mailbox));
    CHECK(pair.atPhone().state == State::olderHere);
    CHECK(pair.atPhone().unheard);
    CHECK(pair.atPhone().waitingSince);
}

TEST_CASE("a wait is overdue from thirty, sixty and eighty-five days on, on both sides, until it is acknowledged", "[outlook]")
{
    Pair pair;
    pair.record();
    REQUIRE(pair.world.desk.writeMessage(pair.course, "How is it?"));
    const auto written = pair.world.clock.now();
    // Both try at once, and reach nobody.
    pair.world.courier.offline = true;
    pair.there();
    pair.world.syncDesk();
    pair.world.courier.offline = false;
    const auto overdue = [&](const Outlook& outlook) { return sync::overdueOf(outlook, pair.world.clock.now()); };
    CHECK(overdue(pair.atPhone()) == 0);
    for (const auto& [days, before] : {std::pair(30, 0), std::pair(60, 30), std::pair(85, 60)}) {
        pair.world.clock.set(written + 24h * days - 1ms);
        CHECK(overdue(pair.atPhone()) == before);
        CHECK(overdue(pair.atDesk()) == before);
        pair.world.clock.advance(1ms);
        CHECK(overdue(pair.atPhone()) == days);
        CHECK(overdue(pair.atDesk()) == days);
    }
    // The hub has it and keeps it: that changes nothing, and nothing is lost by it.
    pair.there();
    CHECK(overdue(pair.atPhone()) == 85);
    pair.world.clock.advance(24h * 30);
    REQUIRE(pair.world.service.tidy(pair.world.clock.now()));
    CHECK(overdue(pair.atPhone()) == 85);
    pair.andBack();
    pair.world.syncDesk();
    CHECK(overdue(pair.atPhone()) == 0);
    CHECK(overdue(pair.atDesk()) == 0);
    CHECK(pair.atPhone().state == State::delivered);
    CHECK(pair.world.desk.course(pair.course)->state->entries.size() == 1);
}
