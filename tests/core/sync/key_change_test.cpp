// Keys that are replaced every thirty days and destroyed in time: what was sealed to an old one within its grace is opened,
// what came too late is sealed anew, and nothing passes for delivered meanwhile.

#include "core/sync/key_change.h"
#include "core/vault/backup.h"
#include "tests/core/desk/clinic_world.h"

using namespace ebbline;
using namespace std::chrono_literals;
using patient::EntryState;

namespace {

constexpr auto day = 24h;

struct Rotating {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);

    desk::Desk& desk() { return world.desk; }
    std::uint32_t epoch() { return desk().vault().epochNumber(); }
    void pass(std::chrono::hours time) { world.clock.advance(time); }
    void everybody(int rounds = 3)
    {
        for (int i = 0; i < rounds; ++i) {
            world.syncPhone(phone);
            world.syncDesk();
        }
        world.syncPhone(phone);
    }
    void record() { REQUIRE(phone.record(world.entryOf(phone, 3, 2))); }
    EntryState::Place place() { return phone.history().front().state.place; }
    std::size_t entries() { return desk().course(course)->state->entries.size(); }
    /// Sealed to the key that is in force now, and given to nobody.
    bytes::Bytes sealedOffline()
    {
        world.courier.offline = true;
        world.syncPhone(phone);
        world.courier.offline = false;
        const auto waiting = phone.vault().outgoing(phone.link()->mailbox);
        REQUIRE(waiting);
        REQUIRE_FALSE(waiting->empty());
        return waiting->back().envelope;
    }
    /// The desk is used, the phone is not; another patient's phone is, or nobody would know of the new epochs.
    void awayFor(std::chrono::hours time)
    {
        for (auto passed = 0h; passed < time; passed += 5 * day) {
            pass(5 * day);
            world.syncDesk();
        }
    }
};

}  // namespace

TEST_CASE("an owner's desk begins an epoch every thirty days by itself, and the phone follows", "[sync][keys]")
{
    Rotating clinic;
    clinic.everybody();
    CHECK(clinic.epoch() == 1);
    clinic.pass(30 * day - 1h);
    clinic.everybody();
    CHECK(clinic.epoch() == 1);
    clinic.pass(2h);
    clinic.everybody();
    CHECK(clinic.epoch() == 2);
    CHECK(clinic.phone.link()->epoch == 2);
    clinic.everybody();
    CHECK(clinic.epoch() == 2);
    clinic.record();
    clinic.everybody();
    CHECK(clinic.place() == EntryState::Place::withClinic);
    CHECK(clinic.desk().vault().sealedTo(clinic.phone.link()->mailbox) == 2u);
    // Every phone in use has moved on: the first key goes a week later, not before.
    CHECK(clinic.desk().vault().epochKey(1));
    clinic.pass(sync::passedKeyIsKept + 1h);
    clinic.everybody();
    CHECK_FALSE(clinic.desk().vault().epochKey(1));
    CHECK(clinic.desk().vault().isDestroyed(1));
    CHECK(clinic.desk().vault().verify());
    CHECK(clinic.phone.vault().verify());
}

TEST_CASE("what was sealed to an old epoch is opened as long as its grace lasts", "[sync][keys]")
{
    Rotating clinic;
    clinic.everybody();
    clinic.record();
    const auto header = envelope::peek(clinic.sealedOffline());
    REQUIRE(header);
    CHECK(header->recipientEpoch == 1);
    clinic.awayFor(sync::oldKeyIsKept);
    CHECK(clinic.epoch() >= 4);
    REQUIRE(clinic.desk().vault().epochKey(1));  // this phone may still seal to it
    CHECK_FALSE(clinic.desk().vault().isDestroyed(1));

    clinic.world.syncPhone(clinic.phone);
    const auto report = clinic.world.syncDesk();
    CHECK(report.quarantined == 0);
    CHECK(clinic.entries() == 1);
    clinic.everybody();
    CHECK(clinic.place() == EntryState::Place::withClinic);
    CHECK(clinic.phone.link()->epoch == clinic.epoch());
}

TEST_CASE("what was sealed to a key that is no more is sealed anew, and counts as delivered only then", "[sync][keys]")
{
    Rotating clinic;
    clinic.everybody();
    clinic.record();
    const auto sealed = clinic.sealedOffline();
    clinic.awayFor(sync::oldKeyIsKept + 60 * day);
    REQUIRE(clinic.desk().vault().isDestroyed(1));
    // Whoever takes the desk now, and has kept what was on its way, reads nothing of it.
    for (std::uint32_t number = 1; number <= clinic.epoch(); ++number)
        if (const crypto::BoxKey* key = clinic.desk().vault().epochKey(number))
            CHECK(envelope::open(sealed, clinic.phone.vault().signingKey().publicKey(), *key).error().reason == Reason::wrongKey);

    clinic.world.syncPhone(clinic.phone);  // the old envelope goes out, and the newest epoch is learned
    clinic.world.syncDesk();               // it cannot be opened: the phone is asked
    CHECK(clinic.entries() == 0);
    CHECK(clinic.place() == EntryState::Place::savedHere);
    clinic.record();  // life goes on meanwhile
    clinic.world.syncPhone(clinic.phone);
    CHECK(clinic.entries() == 0);
    for (const patient::EntryView& view : clinic.phone.history())
        CHECK(view.state.place == EntryState::Place::savedHere);
    clinic.everybody();
    CHECK(clinic.entries() == 2);
    for (const patient::EntryView& view : clinic.phone.history())
        CHECK(view.state.place == EntryState::Place::withClinic);
    const auto standing = clinic.desk().vault().standing(clinic.phone.link()->mailbox);
    CHECK_FALSE((standing->gap || standing->fork || standing->rolledBack));
    CHECK(clinic.desk().vault().quarantined(clinic.phone.link()->mailbox) == 0);
    CHECK(clinic.desk().vault().verify());
    CHECK(clinic.phone.vault().verify());
    // Asked once, not with every run.
    const auto requests = clinic.world.courier.requests;
    clinic.everybody();
    CHECK(clinic.world.courier.requests - requests < 12);
}

TEST_CASE("a phone that was away hears of a newer epoch before it seals anything", "[sync][keys]")
{
    Rotating clinic;
    clinic.everybody();
    clinic.awayFor(sync::oldKeyIsKept + 60 * day);
    clinic.record();
    clinic.world.syncPhone(clinic.phone);
    CHECK(clinic.world.syncDesk().operationsReceived == 2);  // the entry, and the phone's own new key
    CHECK(clinic.entries() == 1);
    CHECK(clinic.desk().vault().sealedTo(clinic.phone.link()->mailbox) == clinic.epoch());
}

TEST_CASE("a hub that answers no question keeps nobody from sending", "[sync][keys]")
{
    Rotating clinic;
    clinic.everybody();
    clinic.pass(6 * day);
    clinic.record();
    clinic.world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (request.method == "GET")
            response = {404, {}, 0, response.hubTime};
    };
    clinic.world.syncPhone(clinic.phone);
    clinic.world.courier.tamper = {};
    CHECK(clinic.world.syncDesk().operationsReceived == 1);
}

TEST_CASE("a phone replaces its own key as well, and the desk seals to the new one", "[sync][keys]")
{
    Rotating clinic;
    clinic.everybody();
    const auto first = clinic.phone.vault().boxKey().publicKey();
    REQUIRE(clinic.desk().writeMessage(clinic.course, "sealed to the first key"));
    clinic.world.courier.offline = true;
    clinic.world.syncDesk();
    clinic.world.courier.offline = false;
    clinic.pass(31 * day);
    clinic.world.syncPhone(clinic.phone);  // announces the second
    CHECK(clinic.phone.vault().boxKey().publicKey() != first);
    CHECK(clinic.phone.vault().boxKeys().size() == 2);
    clinic.everybody();
    CHECK(clinic.phone.messages().size() == 1);  // the earlier key still opens what was on its way
    REQUIRE(clinic.desk().writeMessage(clinic.course, "sealed to the second"));
    clinic.world.syncDesk();
    const auto waiting = clinic.desk().vault().outgoing(clinic.phone.link()->mailbox);
    REQUIRE(waiting);
    REQUIRE_FALSE(waiting->empty());
    CHECK(envelope::open(waiting->back().envelope, clinic.desk().vault().signingKey().publicKey(), clinic.phone.vault().boxKey()));
    clinic.everybody();
    CHECK(clinic.phone.messages().size() == 2);
    // The first one goes in time.
    for (int i = 0; i < 30; ++i) {
        clinic.pass(5 * day);
        clinic.everybody(1);
    }
    for (const crypto::BoxKey* key : clinic.phone.vault().boxKeys())
        CHECK(key->publicKey() != first);
    CHECK(clinic.phone.vault().hasDestroyed());
    CHECK(clinic.phone.vault().verify());
    REQUIRE(clinic.desk().writeMessage(clinic.course, "and on"));
    clinic.everybody();
    CHECK(clinic.phone.messages().size() == 3);
}

TEST_CASE("a desk that was closed for most of a year reaches the phone again, though the phone's key is another", "[sync][keys]")
{
    Rotating clinic;
    clinic.everybody();
    REQUIRE(clinic.desk().writeMessage(clinic.course, "written before the holidays"));
    clinic.world.courier.offline = true;
    clinic.world.syncDesk();
    clinic.world.courier.offline = false;
    for (int i = 0; i < 60; ++i) {
        clinic.pass(5 * day);
        clinic.world.syncPhone(clinic.phone);
    }
    REQUIRE(clinic.phone.vault().hasDestroyed());
    clinic.record();
    for (int i = 0; i < 4; ++i) {
        clinic.everybody();
        clinic.pass(7h);
    }
    CHECK(clinic.entries() == 1);
    REQUIRE(clinic.phone.messages().size() == 1);
    CHECK(clinic.place() == EntryState::Place::withClinic);
    const auto standing = clinic.phone.vault().standing(clinic.phone.link()->mailbox);
    CHECK_FALSE((standing->gap || standing->fork));
}

TEST_CASE("a vault that destroyed its first keys opens again, and holds none of them", "[sync][keys]")
{
    test::ClinicWorld world;
    {
        auto vault = vault::Vault::create(world.folder.path() / "v", vault::Vault::Owner::clinic, test::passphrase, test::cheap, world.clock);
        REQUIRE(vault);
        CHECK(vault->destroyKey(1).error().reason == Reason::refused);
        REQUIRE(vault->putEpoch(2, crypto::BoxKey::generate()));
        REQUIRE(vault->putEpoch(3, crypto::BoxKey::generate()));
        REQUIRE(vault->destroyKey(1));
        REQUIRE(vault->destroyKey(2));
        CHECK(vault->destroyKey(3).error().reason == Reason::refused);
        CHECK(vault->verify());
    }
    auto again = vault::Vault::unlock(world.folder.path() / "v", test::passphrase, world.clock);
    REQUIRE(again);
    CHECK_FALSE(again->epochKey(1));
    CHECK_FALSE(again->epochKey(2));
    CHECK(again->epochKey(3));
    CHECK(again->epochNumber() == 3);
    CHECK(again->keyAges()->size() == 1);
    CHECK(again->verify());
}

TEST_CASE("a desk that was put back to a backup of the epoch before opens what patients seal now", "[sync][keys]")
{
    Rotating clinic;
    clinic.everybody();
    const auto home = clinic.world.folder.path() / "desk", file = clinic.world.folder.path() / "backup.ebb", back = clinic.world.folder.path() / "back";
    const auto offered = vault::Offered::passphrase(test::passphrase);
    REQUIRE(vault::backup(home, offered, clinic.world.clock.readings(), file));
    clinic.pass(31 * day);
    clinic.everybody();
    REQUIRE(clinic.epoch() == 2);
    clinic.record();
    clinic.world.syncPhone(clinic.phone);

    REQUIRE(vault::restore(file, offered, clinic.world.clock.readings(), back));
    auto restored = desk::Desk::unlock(back, test::passphrase, clinic.world.clock, clinic.world.zone);
    REQUIRE(restored);
    CHECK(restored->vault().epochNumber() == 1);
    sync::Report report;
    restored->syncNow(clinic.world.courier, [&](const sync::Report& done) { report = done; });
    CHECK(restored->course(clinic.course)->state->entries.size() == 1);
    CHECK(restored->vault().epochNumber() >= 2);
}
