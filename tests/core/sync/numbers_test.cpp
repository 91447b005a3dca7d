// Two operations under one number, which a device writes that was put back to an older copy: what the other side
// holds stays, what came is set apart and shown, and nothing passes for delivered.

#include "tests/core/desk/clinic_world.h"

#include "core/sync/messages.h"
#include "core/vault/backup.h"

using namespace ebbline;
using namespace std::chrono_literals;
using patient::EntryState;

namespace {

struct Patient {
    test::ClinicWorld world;
    recovery::CourseId first = world.treat();
    std::filesystem::path home = world.folder.path() / "phone0";
    std::filesystem::path aside = world.folder.path() / "aside";

    Patient()
    {
        world.join(first);
        world.syncDesk();
    }
    patient::Diary& phone() { return *world.phones.front(); }
    void shut() { world.phones.front().reset(); }
    void reopen()
    {
        auto opened = patient::Diary::unlock(home, test::passphrase, world.clock, world.zone);
        REQUIRE(opened);
        world.phones.front() = std::make_unique<patient::Diary>(std::move(*opened));
    }
    /// A second treatment, for which the same phone is paired again.
    recovery::CourseId treatAgain()
    {
        world.clock.advance(24h);
        const auto course = world.treat();
        desk::Inviting inviting(world.desk, world.clock, course, triggers::defaultProtocol(), world.inDays(21));
        inviting.start(world.courier, [] {});
        patient::Joining joining(phone(), world.clock);
        REQUIRE(joining.start(inviting.qrText()));
        for (int i = 0; i < 4; ++i) {
            joining.poll(world.courier, [] {});
            inviting.poll(world.courier, [] {});
        }
        inviting.confirm(world.courier, [] {});
        joining.poll(world.courier, [] {});
        REQUIRE(joining.step() == patient::Joining::Step::linked);
        world.syncDesk();
        world.syncPhone(phone());
        REQUIRE(phone().course().course == course);
        return course;
    }
    void recordAndSync()
    {
        REQUIRE(phone().record(world.entryOf(phone(), 4, 4)));
        for (int i = 0; i < 2; ++i) {
            world.syncPhone(phone());
            world.syncDesk();
        }
        world.syncPhone(phone());
    }
    EntryState::Place place() { return phone().history().front().state.place; }
    std::size_t entriesAtDesk(const recovery::CourseId& course) { return world.desk.course(course)->state->entries.size(); }
    vault::Standing atDesk() { return *world.desk.vault().standing(phone().link()->mailbox); }
};

}  // namespace

TEST_CASE("a phone that is paired again writes to the clinic through its new link", "[sync]")
{
    Patient patient;
    const auto before = patient.phone().link()->mailbox;
    const auto second = patient.treatAgain();
    CHECK(patient.phone().link()->mailbox != before);
    CHECK_FALSE(patient.phone().replaced());
    patient.recordAndSync();
    CHECK(patient.place() == EntryState::Place::withClinic);
    CHECK(patient.entriesAtDesk(second) == 1);
}

TEST_CASE("an entry under a number that the clinic holds already never passes for delivered", "[sync]")
{
    Patient patient;
    patient.shut();
    std::filesystem::copy(patient.home, patient.aside, std::filesystem::copy_options::recursive);
    patient.reopen();
    patient.recordAndSync();
    REQUIRE(patient.place() == EntryState::Place::withClinic);
    const auto held = patient.world.desk.vault().operations();

    // A plain copy of the folder, behind the program's back; then a new link, in which all begins at one.
    patient.shut();
    std::filesystem::remove_all(patient.home);
    std::filesystem::copy(patient.aside, patient.home, std::filesystem::copy_options::recursive);
    patient.reopen();
    const auto second = patient.treatAgain();
    patient.recordAndSync();

    CHECK(patient.entriesAtDesk(second) == 0);
    CHECK(patient.place() == EntryState::Place::savedHere);
    CHECK(patient.atDesk().fork);
    CHECK(patient.world.desk.vault().quarantined(patient.phone().link()->mailbox) == 1);
    CHECK(patient.entriesAtDesk(patient.first) == 1);
    for (const journal::Operation& operation : held)
        CHECK(std::ranges::count(patient.world.desk.vault().operations(), operation) == 1);
}

TEST_CASE("a vault that was restored from a backup takes numbers that nobody has seen", "[sync]")
{
    Patient patient;
    const auto file = patient.world.folder.path() / "phone.ebbline";
    const auto offered = vault::Offered::passphrase(test::passphrase);
    patient.shut();
    REQUIRE(vault::backup(patient.home, offered, patient.world.clock.readings(), file));
    patient.reopen();
    patient.recordAndSync();
    REQUIRE(patient.place() == EntryState::Place::withClinic);

    patient.shut();
    std::filesystem::remove_all(patient.home);
    REQUIRE(vault::restore(file, offered, patient.world.clock.readings(), patient.home));
    patient.reopen();
    const auto second = patient.treatAgain();
    patient.recordAndSync();

    CHECK(patient.place() == EntryState::Place::withClinic);
    CHECK(patient.entriesAtDesk(second) == 1);
    CHECK(patient.entriesAtDesk(patient.first) == 1);
    CHECK_FALSE(patient.atDesk().fork);
    CHECK(patient.phone().vault().verify());
}
