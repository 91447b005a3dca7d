// Waiting at the hub: what ends it, what does not, and what the hub is told.

#include "core/sync/listening.h"
#include "core/sync/rhythm.h"
#include "tests/core/sync/holding_courier.h"

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

struct Waiting {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);
    test::HoldingCourier hub{world};
    std::optional<sync::Heard> heard;

    Waiting()
    {
        for (int i = 0; i < 2; ++i) {
            world.syncDesk();
            world.syncPhone(phone);
        }
    }
    void wait(sync::Listening& listening, std::chrono::seconds atMost = 25s)
    {
        heard.reset();
        listening.wait(atMost, [this](const sync::Heard& each) { heard = each; });
    }
    bool isNews() const { return heard && heard->news && *heard->news; }
    bool isNothing() const { return heard && heard->news && !*heard->news; }
    void entry()
    {
        REQUIRE(phone.record(world.entryOf(phone, 3, 2)));
        world.syncPhone(phone);
    }
};

}  // namespace

TEST_CASE("a desk hears of an entry at once, in one question for all its mailboxes, and of nothing else", "[sync][listening]")
{
    Waiting it;
    sync::Listening desk(it.world.desk.vault(), it.hub);
    it.wait(desk);
    REQUIRE(it.hub.asked.size() == 1);
    CHECK(it.hub.asked[0].path == "/v1/news");
    CHECK(it.hub.asked[0].query == "wait=25");
    CHECK(desk.isWaiting());
    it.hub.look();
    CHECK(it.hub.isHolding());
    it.entry();
    it.hub.look();
    CHECK(it.isNews());
    CHECK_FALSE(desk.isWaiting());
    // Nothing was taken by it: looking is what takes.
    CHECK(it.world.syncDesk().envelopesReceived == 1);
    it.wait(desk);
    CHECK(it.hub.isHolding());
    it.hub.look(true);
    CHECK(it.isNothing());
}

TEST_CASE("a phone hears of a message at once", "[sync][listening]")
{
    Waiting it;
    sync::Listening phone(it.phone.vault(), it.hub);
    it.wait(phone, 10s);
    REQUIRE(it.hub.asked.size() == 1);
    CHECK(it.hub.asked[0].path.starts_with("/v1/m/"));
    CHECK(it.hub.asked[0].query.starts_with("after="));
    CHECK(it.hub.asked[0].query.ends_with("&wait=10"));
    CHECK(it.hub.isHolding());
    REQUIRE(it.world.desk.writeMessage(it.course, "How is it?"));
    it.world.syncDesk();
    it.hub.look();
    CHECK(it.isNews());
    CHECK(it.world.syncPhone(it.phone).envelopesReceived == 1);
    it.wait(phone);
    CHECK(it.hub.isHolding());
}

TEST_CASE("news that a desk cannot take do not end its next wait; further news do", "[sync][listening]")
{
    Waiting it;
    sync::Listening desk(it.world.desk.vault(), it.hub);
    it.entry();
    // Heard, and not fetched: as if the envelope could not be accepted.
    it.wait(desk);
    CHECK(it.isNews());
    it.wait(desk);
    CHECK(it.hub.isHolding());
    CHECK(it.hub.asked.back().query.starts_with("wait=25&known="));
    it.hub.look(true);
    // Another phone has something.
    patient::Diary& other = it.world.join(it.world.treat("Tomas Reyl"));
    it.world.syncDesk();
    it.wait(desk);
    it.hub.look(true);
    REQUIRE(other.record(it.world.entryOf(other, 1, 1)));
    it.world.syncPhone(other);
    it.wait(desk);
    CHECK(it.isNews());
}

TEST_CASE("what lies at a hub for good is no news when a wait is over; what comes beside it is", "[sync][listening]")
{
    Waiting it;
    patient::Diary& other = it.world.join(it.world.treat("Tomas Reyl"));
    it.world.syncDesk();
    sync::Listening desk(it.world.desk.vault(), it.hub);
    it.entry();
    it.wait(desk);
    REQUIRE(it.isNews());
    for (int i = 0; i < 2; ++i) {
        it.wait(desk);
        REQUIRE(it.hub.isHolding());
        it.world.clock.advance(25s);
        it.hub.look(true);
        CHECK(it.isNothing());
    }
    // The same sooner: something more was put into one of them.
    it.wait(desk);
    it.hub.look(true);
    CHECK(it.isNews());

    it.wait(desk);
    it.world.clock.advance(25s);
    REQUIRE(other.record(it.world.entryOf(other, 1, 1)));
    it.world.syncPhone(other);
    it.hub.look(true);
    CHECK(it.isNews());
    it.world.syncDesk();
    it.wait(desk);
    it.world.clock.advance(25s);
    it.hub.look(true);
    CHECK(it.isNothing());
}

TEST_CASE("a vault without a mailbox has nothing to wait for, and asks nobody", "[sync][listening]")
{
    Waiting it;
    patient::Diary& fresh = it.world.newPhone();
    sync::Listening phone(fresh.vault(), it.hub);
    it.wait(phone);
    REQUIRE(it.heard);
    REQUIRE_FALSE(it.heard->news);
    CHECK(it.heard->news.error().reason == Reason::notFound);
    CHECK(it.hub.asked.empty());
}

TEST_CASE("with no network the reason is said, and nothing waits on", "[sync][listening]")
{
    Waiting it;
    it.world.courier.offline = true;
    sync::Listening phone(it.phone.vault(), it.world.courier);
    it.wait(phone);
    REQUIRE(it.heard);
    REQUIRE_FALSE(it.heard->news);
    CHECK(it.heard->news.error().reason == Reason::unreachable);
    CHECK_FALSE(phone.isWaiting());
}

TEST_CASE("who stops listening is called no more, and a second wait beside the first is none", "[sync][listening]")
{
    Waiting it;
    {
        sync::Listening desk(it.world.desk.vault(), it.hub);
        it.wait(desk);
        it.wait(desk);
        CHECK(it.hub.asked.size() == 1);
    }
    it.entry();
    it.hub.look();
    CHECK_FALSE(it.heard);
}

TEST_CASE("a hub that limits a run is heard with its Retry-After, and so is one that limits a wait", "[sync][listening][rhythm]")
{
    Waiting it;
    it.world.courier.tamper = [](const mailbox::Request&, mailbox::Response& response) {
        response = {429, {}, 77, response.hubTime};
    };
    const sync::Report run = it.world.syncPhone(it.phone);
    CHECK_FALSE(run.reached);
    CHECK(run.retryAfter == 77s);
    REQUIRE(run.problem);
    CHECK(run.problem->reason == Reason::tooSoon);
    CHECK(it.world.syncDesk().retryAfter == 77s);
    sync::Listening phone(it.phone.vault(), it.world.courier);
    it.wait(phone);
    REQUIRE(it.heard);
    CHECK(it.heard->retryAfter == 77s);
    // A store that is away says so, too.
    it.world.courier.tamper = [](const mailbox::Request&, mailbox::Response& response) {
        response = {503, {}, -5, response.hubTime};
    };
    CHECK(it.world.syncPhone(it.phone).retryAfter == 0s);
    it.world.courier.tamper = {};
    const sync::Report after = it.world.syncPhone(it.phone);
    CHECK(after.reached);
    CHECK(after.retryAfter == 0s);
}
