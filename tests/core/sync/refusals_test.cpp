// An envelope that the hub does not take: it is seen, nothing is passed over or lost, and everything else goes on.

#include "core/bytes/text.h"
#include "core/sync/outlook.h"
#include "tests/core/desk/clinic_world.h"

#include <catch2/generators/catch_generators.hpp>

#include <set>

using namespace ebbline;
using namespace std::chrono_literals;
using sync::Outlook;
using sync::Refusal;

namespace {

bool isPut(const mailbox::Request& request) { return request.method == "PUT" && request.path.starts_with("/v1/m/"); }

struct Pair {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);
    envelope::MailboxId mailbox = phone.link()->mailbox;
    std::vector<std::string> offered;  ///< paths that were turned down or would have been

    Pair()
    {
        world.syncDesk();
        world.syncPhone(phone);
    }
    void record() { REQUIRE(phone.record(world.entryOf(phone, 3, 2))); }
    Outlook atPhone() { return *sync::outlookOf(phone.vault(), mailbox); }
    /// From now on the hub answers so to what is put into the mailbox.
    void refuse(int status)
    {
        world.courier.refuse = [this, status](const mailbox::Request& request) {
            if (!isPut(request))
                return 0;
            offered.push_back(request.path);
            return status;
        };
    }
    void entriesAtDesk(std::size_t count) { CHECK(world.desk.course(course)->state->entries.size() == count); }
};

sync::Report syncOf(desk::Desk& desk, sync::Courier& courier)
{
    sync::Report report;
    desk.syncNow(courier, [&](const sync::Report& done) { report = done; });
    return report;
}

}  // namespace

TEST_CASE("what the hub turns down is seen with its reason, and is gone once the hub takes it", "[sync][refusals]")
{
    const auto [status, why] = GENERATE(table<int, Refusal::Why>({{409, Refusal::Why::taken},
                                                                  {507, Refusal::Why::full},
                                                                  {413, Refusal::Why::unreadable},
                                                                  {400, Refusal::Why::unreadable},
                                                                  {401, Refusal::Why::unknownThere},
                                                                  {404, Refusal::Why::unknownThere}}));
    Pair pair;
    pair.record();
    pair.refuse(status);
    const auto report = pair.world.syncPhone(pair.phone);
    REQUIRE(report.problem);
    CHECK(report.refused == 1);
    CHECK(pair.atPhone().state == Outlook::State::refused);
    REQUIRE(pair.atPhone().refusal);
    CHECK(pair.atPhone().refusal->why == why);
    CHECK(pair.atPhone().refusal->times == 1);
    CHECK(pair.atPhone().refusal->since == pair.world.clock.now());

    pair.world.courier.refuse = {};
    CHECK(pair.world.syncPhone(pair.phone).refused == 0);
    CHECK(pair.atPhone().state == Outlook::State::waiting);
    pair.world.syncDesk();
    pair.world.syncPhone(pair.phone);
    CHECK(pair.atPhone().state == Outlook::State::delivered);
    pair.entriesAtDesk(1);
}

TEST_CASE("no network and a hub's limit are no refusals", "[sync][refusals]")
{
    const int status = GENERATE(429, 500, 503);
    Pair pair;
    pair.record();
    pair.refuse(status);
    CHECK(pair.world.syncPhone(pair.phone).problem);
    CHECK_FALSE(pair.atPhone().refusal);
    pair.world.courier.refuse = {};
    pair.world.courier.offline = true;
    CHECK(pair.world.syncPhone(pair.phone).problem);
    CHECK(pair.atPhone().state == Outlook::State::waiting);
}

TEST_CASE("what comes goes on while nothing goes out, and nothing behind the refused one is offered", "[sync][refusals]")
{
    Pair pair;
    pair.record();
    pair.refuse(409);
    pair.world.syncPhone(pair.phone);
    for (int i = 0; i < 3; ++i) {
        pair.record();
        REQUIRE(pair.world.desk.writeMessage(pair.course, "Message " + std::to_string(i)));
        // The desk's own way is free.
        pair.world.courier.refuse = {};
        pair.world.syncDesk();
        pair.refuse(409);
        pair.world.clock.advance(2h);
        CHECK(pair.world.syncPhone(pair.phone).operationsReceived == 1);
    }
    CHECK(pair.phone.messages().size() == 3);
    CHECK(std::set(pair.offered.begin(), pair.offered.end()).size() == 1);
    CHECK(pair.offered.size() == 4);  // once a run
    pair.entriesAtDesk(0);

    pair.world.courier.refuse = {};
    pair.world.clock.advance(2h);
    pair.world.syncPhone(pair.phone);
    pair.world.syncDesk();
    pair.entriesAtDesk(4);
    CHECK_FALSE(pair.world.desk.vault().standing(pair.mailbox)->gap);
    pair.world.syncPhone(pair.phone);
    CHECK(pair.atPhone().state == Outlook::State::delivered);
    CHECK(pair.world.desk.vault().verify());
    CHECK(pair.phone.vault().verify());
}

TEST_CASE("it is tried again ever more rarely, up to an hour, and a clock that was set back keeps nothing waiting", "[sync][refusals]")
{
    Pair pair;
    pair.record();
    pair.refuse(507);
    for (int i = 0; i < 6 * 120; ++i) {  // six hours of a desk's looks
        pair.world.syncPhone(pair.phone);
        pair.world.clock.advance(30s);
    }
    // Three at once, then after 1, 2, 4, 8, 16, 32 minutes, then every hour.
    CHECK(pair.offered.size() == 3 + 6 + 4);
    CHECK(pair.atPhone().refusal->times == pair.offered.size());
    CHECK(pair.atPhone().refusal->since < pair.world.clock.now() - 5h);

    const auto before = pair.offered.size();
    pair.world.clock.turnWall(pair.world.clock.now() - 48h);
    pair.world.syncPhone(pair.phone);
    CHECK(pair.offered.size() == before + 1);
}

TEST_CASE("a mailbox that is refused holds up no other one of the desk", "[sync][refusals]")
{
    Pair pair;
    const auto other = pair.world.treat("Tomas Reyl");
    patient::Diary& second = pair.world.join(other);
    const std::string refused = "/v1/m/" + bytes::toHex(pair.mailbox.view());
    pair.world.courier.refuse = [&](const mailbox::Request& request) { return isPut(request) && request.path.starts_with(refused) ? 409 : 0; };
    REQUIRE(pair.world.desk.writeMessage(pair.course, "For the one."));
    REQUIRE(pair.world.desk.writeMessage(other, "For the other."));
    for (int i = 0; i < 5; ++i)
        CHECK(pair.world.syncDesk().refused == 1);
    pair.world.syncPhone(second);
    CHECK(second.messages().size() == 1);
    CHECK(sync::outlookOf(pair.world.desk.vault(), pair.mailbox)->state == Outlook::State::refused);
    CHECK_FALSE(sync::outlookOf(pair.world.desk.vault(), second.link()->mailbox)->refusal);

    pair.world.courier.refuse = {};
    pair.world.clock.advance(sync::longestRest);
    CHECK(pair.world.syncDesk().refused == 0);
    pair.world.syncPhone(pair.phone);
    CHECK(pair.phone.messages().size() == 1);
}

TEST_CASE("a desk that the hub does not know is told so for every mailbox where something waits", "[sync][refusals]")
{
    Pair pair;
    const auto other = pair.world.treat("Tomas Reyl");
    patient::Diary& second = pair.world.join(other);
    pair.world.syncDesk();
    REQUIRE(pair.world.desk.writeMessage(pair.course, "For the one."));
    pair.world.courier.refuse = [](const mailbox::Request& request) { return isPut(request) ? 507 : 0; };
    pair.world.syncDesk();  // sealed, and turned down for another reason
    pair.world.courier.refuse = [](const mailbox::Request& request) { return request.path == "/v1/news" ? 401 : 0; };

    const auto report = pair.world.syncDesk();

    CHECK(report.problem);
    CHECK(report.refused == 1);
    const auto outlook = sync::outlookOf(pair.world.desk.vault(), pair.mailbox);
    REQUIRE(outlook->refusal);
    CHECK(outlook->refusal->why == Refusal::Why::unknownThere);
    CHECK_FALSE(sync::outlookOf(pair.world.desk.vault(), second.link()->mailbox)->refusal);

    pair.world.courier.refuse = {};
    pair.world.syncDesk();
    pair.world.syncPhone(pair.phone);
    CHECK(pair.phone.messages().size() == 1);
}

TEST_CASE("what the other end acknowledged all the same is refused no more", "[sync][refusals]")
{
    Pair pair;
    pair.record();
    // The hub took it, and says that it did not.
    pair.world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (isPut(request))
            response.status = 409;
    };
    pair.world.syncPhone(pair.phone);
    REQUIRE(pair.atPhone().refusal);
    pair.world.courier.tamper = {};
    pair.world.syncDesk();
    pair.entriesAtDesk(1);
    const auto report = pair.world.syncPhone(pair.phone);
    CHECK(report.refused == 0);
    CHECK(pair.atPhone().state == Outlook::State::delivered);
}

TEST_CASE("between two desks nothing is passed over: after fifty refusals both hold the same bytes", "[sync][refusals][clinic]")
{
    Pair pair;
    auto& world = pair.world;
    desk::Desk second = *desk::Desk::create(world.folder.path() / "second", test::passphrase, test::cheap, world.clock, world.zone);
    second.setPerson("Dr. Jonas Feld");
    REQUIRE(world.desk.allowStep(test::passphrase));
    desk::Inviting inviting(world.desk, world.clock, desk::Inviting::NewDesk::plain);
    inviting.start(world.courier, [] {});
    desk::Applying applying(second, world.clock);
    REQUIRE(applying.start(inviting.typedCode(), "hub.example"));
    for (int i = 0; i < 4; ++i) {
        applying.poll(world.courier, [] {});
        inviting.poll(world.courier, [] {});
    }
    inviting.confirm(world.courier, [] {});
    applying.poll(world.courier, [] {});
    REQUIRE(applying.step() == desk::Applying::Step::linked);
    const auto everybody = [&](int rounds) {
        for (int i = 0; i < rounds; ++i) {
            world.syncPhone(pair.phone);
            world.syncDesk();
            syncOf(second, world.courier);
        }
    };
    everybody(4);
    REQUIRE(journal::dump(second.vault().state()) == journal::dump(world.desk.vault().state()));

    // The first desk's way to the second is barred, while a phone writes, both desks hear it, and both act.
    const auto channels = world.desk.vault().channels();
    REQUIRE(channels->size() == 1);
    const std::string barred = "/v1/m/" + bytes::toHex(channels->front().mailbox.view()) + '/' + bytes::toHex(world.desk.vault().device().view());
    world.courier.refuse = [&](const mailbox::Request& request) { return isPut(request) && request.path.starts_with(barred) ? 409 : 0; };
    for (int i = 0; i < 50; ++i) {
        pair.record();
        if (i % 5 == 0) {
            REQUIRE(world.desk.writeMessage(pair.course, "From the first, " + std::to_string(i)));
            REQUIRE(second.writeMessage(pair.course, "From the second, " + std::to_string(i)));
        }
        world.clock.advance(2h);
        everybody(1);
    }
    CHECK(sync::refusals(world.desk.vault())->size() == 1);
    CHECK(sync::refusals(world.desk.vault())->front().times >= 20);

    world.courier.refuse = {};
    for (int i = 0; i < 4; ++i) {
        world.clock.advance(2h);  // the hub's limit of rate counts all that waited
        everybody(1);
    }
    CHECK(sync::refusals(world.desk.vault())->empty());
    CHECK(journal::dump(second.vault().state()) == journal::dump(world.desk.vault().state()));
    CHECK(pair.phone.messages().size() == 20);
    pair.entriesAtDesk(50);
    CHECK(second.course(pair.course)->state->entries.size() == 50);
    for (desk::Desk* each : {&world.desk, &second})
        CHECK_FALSE(each->vault().standing(pair.mailbox)->gap);
    CHECK(world.desk.vault().verify());
    CHECK(second.vault().verify());
}
