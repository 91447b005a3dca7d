// A phone that is paired again: what it had not sent goes on in its new mailbox if that is of the same course, and is counted
// as left behind if it is not.

#include "tests/core/sync/two_desks.h"

#include "core/bytes/text.h"
#include "core/sync/messages.h"
#include "tests/core/photos/sample_jpeg.h"

using namespace ebbline;
using namespace std::chrono_literals;
using patient::EntryState;

namespace {

void pair(test::ClinicWorld& world, const recovery::CourseId& course, patient::Diary& diary)
{
    desk::Inviting inviting(world.desk, world.clock, course, triggers::defaultProtocol(), world.inDays(21));
    inviting.start(world.courier, [] {});
    patient::Joining joining(diary, world.clock);
    REQUIRE(joining.start(inviting.qrText()));
    for (int i = 0; i < 4; ++i) {
        joining.poll(world.courier, [] {});
        inviting.poll(world.courier, [] {});
    }
    inviting.confirm(world.courier, [] {});
    joining.poll(world.courier, [] {});
    REQUIRE(joining.step() == patient::Joining::Step::linked);
}

}  // namespace

TEST_CASE("a phone that is paired again for its own course goes on with it, and sends what it had not", "[sync][clinic]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    REQUIRE(phone.record(world.entryOf(phone, 3, 2)));
    for (int i = 0; i < 2; ++i) {
        world.syncPhone(phone);
        world.syncDesk();
    }
    world.syncPhone(phone);
    // One that the clinic takes, without the phone hearing of it; one that waits at the hub; one that is still on the phone.
    REQUIRE(phone.record(world.entryOf(phone, 3, 3)));
    world.syncPhone(phone);
    world.syncDesk();
    world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (request.method == "GET")
            response.body.clear();
    };
    REQUIRE(phone.record(world.entryOf(phone, 3, 4)));
    world.syncPhone(phone);
    world.courier.tamper = {};
    REQUIRE(phone.record(world.entryOf(phone, 3, 5)));
    const auto former = phone.link()->mailbox;
    world.clock.advance(1h);
    pair(world, course, phone);
    REQUIRE(phone.link()->mailbox != former);
    REQUIRE(world.desk.writeMessage(course, "Welcome back."));
    REQUIRE(phone.record(world.entryOf(phone, 4, 2)));
    world.syncDesk();
    // Two mailboxes, and the hub may hand over either first.
    std::string silent;
    SECTION("its end is heard first") { silent = bytes::toHex(phone.link()->mailbox.view()); }
    SECTION("its course is heard first") { silent = bytes::toHex(former.view()); }
    world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (request.method == "GET" && request.path.starts_with("/v1/m/" + silent))
            response.body.clear();
    };
    world.syncPhone(phone);
    world.courier.tamper = {};
    for (int i = 0; i < 4; ++i) {
        world.syncDesk();
        world.syncPhone(phone);
    }
    CHECK(phone.messages().size() == 1);
    CHECK(phone.vault().quarantined(phone.link()->mailbox) == 0);
    CHECK(world.desk.vault().quarantined(phone.link()->mailbox) == 0);
    CHECK(phone.history().size() == 5);
    for (const patient::EntryView& view : phone.history())
        CHECK(view.state.place == EntryState::Place::withClinic);
    CHECK(world.desk.course(course)->state->entries.size() == 5);
    // Nothing is left behind, and that is what the clinic was told.
    const auto left = sync::leftBehind(world.desk.vault(), former);
    REQUIRE(left);
    REQUIRE(*left);
    CHECK((*left)->isNothing());
    CHECK(phone.vault().verify());
}

TEST_CASE("what a phone left in a course that another phone has now is counted, and does not go into its new course", "[sync][endings]")
{
    test::ClinicWorld world;
    const auto first = world.treat();
    patient::Diary& phone = world.join(first);
    world.syncDesk();
    const auto former = phone.link()->mailbox;
    REQUIRE(phone.record(world.entryOf(phone, 3, 2)));
    world.clock.advance(24h);
    const auto second = world.treat();
    pair(world, second, phone);
    world.syncDesk();
    world.syncPhone(phone);
    REQUIRE(phone.course().course == second);
    REQUIRE(phone.record(world.entryOf(phone, 4, 2)));
    world.join(first);
    for (int i = 0; i < 3; ++i) {
        world.syncPhone(phone);
        world.syncDesk();
    }
    world.syncPhone(phone);
    const auto left = sync::leftBehind(world.desk.vault(), former);
    REQUIRE(left);
    REQUIRE(*left);
    CHECK((*left)->entries == 1);
    CHECK(world.desk.course(first)->state->entries.empty());
    CHECK(world.desk.course(second)->state->entries.size() == 1);
    CHECK(phone.history().size() == 1);
    CHECK(phone.history().front().state.place == EntryState::Place::withClinic);
    CHECK(world.desk.vault().quarantined(phone.link()->mailbox) == 0);
}

TEST_CASE("a phone with two courses speaks of the one that it is paired for, whichever treatment is the newer", "[sync][photos]")
{
    test::ClinicWorld world;
    const auto older = world.treat("Lea Fontaine");
    world.clock.advance(24h);
    const auto newer = world.treat();
    patient::Diary& phone = world.join(newer);
    world.syncDesk();
    const auto taken = phone.addPhoto(test::sampleJpegOf(200'000), photos::Pose::front, {}, world.now());
    REQUIRE(taken.has_value());
    REQUIRE(phone.course().course == newer);

    pair(world, older, phone);
    world.syncDesk();
    std::size_t photosSent = 0;
    for (int i = 0; i < 3; ++i) {
        photosSent += world.syncPhone(phone).photosSent;
        world.syncDesk();
    }
    CHECK(phone.course().course == older);
    // Her photograph of the other course goes to nobody, and stands in no mailbox of this one.
    CHECK(photosSent == 0);
    CHECK(world.store->usage(world.clock.now())->blobs == 0);
    CHECK(phone.photos().empty());

    REQUIRE(phone.record(world.entryOf(phone, 4, 2)));
    for (int i = 0; i < 2; ++i) {
        world.syncPhone(phone);
        world.syncDesk();
    }
    CHECK(world.desk.course(older)->state->entries.size() == 1);
    CHECK(world.desk.course(newer)->state->entries.empty());
    CHECK(world.desk.vault().quarantined(phone.link()->mailbox) == 0);
}

TEST_CASE("a colleague hears of an entry that came after a later one of the same phone", "[sync][clinic]")
{
    test::TwoDesks two;
    two.enlist();
    two.everybody();
    test::ClinicWorld& world = two.world;
    two.record();
    const std::string former = "/v1/m/" + bytes::toHex(two.phone.link()->mailbox.view());
    world.clock.advance(1h);
    pair(world, two.course, two.phone);
    two.record();
    world.syncDesk();
    // In its former mailbox the phone hears nothing yet: what it writes now is there before what it had not sent.
    world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (request.method == "GET" && request.path.starts_with(former))
            response.body.clear();
    };
    world.syncPhone(two.phone);
    world.syncPhone(two.phone);
    world.courier.tamper = {};
    world.syncDesk();
    REQUIRE(world.desk.course(two.course)->state->entries.size() == 1);
    for (int i = 0; i < 3; ++i) {
        world.syncPhone(two.phone);
        world.syncDesk();
    }
    REQUIRE(world.desk.course(two.course)->state->entries.size() == 2);
    two.everybody();
    CHECK(two.second.course(two.course)->state->entries.size() == 2);
    CHECK(two.whole(two.second) == two.whole(world.desk));
}
