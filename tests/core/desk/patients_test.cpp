// Correcting what a patient was registered with, and how old a desk's last backup is.

#include "core/desk/traces.h"
#include "tests/core/desk/clinic_world.h"

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

struct Room {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    recovery::PatientId patient = desk().patients().front().patient;

    desk::Desk& desk() { return world.desk; }
    records::PatientRegistered known() { return desk().vault().state().patients.at(patient); }
    records::PatientRegistered with(const char* phone)
    {
        auto changed = known();
        changed.phone = phone;
        return changed;
    }
    std::size_t operations() { return desk().vault().state().operations; }
};

}  // namespace

TEST_CASE("a corrected number stands wherever the patient does, and the former one stays on record", "[desk][patients]")
{
    Room room;
    const auto done = room.desk().correctPatient(room.with("+00 555 0199"), {});
    REQUIRE(done);
    CHECK(room.desk().patients().size() == 1);
    CHECK(room.desk().summary(room.course)->patientPhone == "+00 555 0199");
    CHECK(room.desk().course(room.course)->summary.patientPhone == "+00 555 0199");
    const auto corrections = room.desk().corrections(room.patient);
    REQUIRE(corrections.size() == 1);
    CHECK(corrections[0].before.phone == "+00 555 0101");
    CHECK(corrections[0].by == "Dr. Ada Lund");
    CHECK(corrections[0].operation == *done);

    const auto traces = desk::traces(room.desk().vault().state(), room.desk().vault().operations());
    REQUIRE_FALSE(traces.empty());
    CHECK(traces.front().kind == records::Kind::patientRegistered);
    CHECK(traces.front().corrected);
    CHECK(traces.front().by == "Dr. Ada Lund");
    CHECK_FALSE(traces.front().beyondRole);
    CHECK(std::ranges::count_if(traces, [](const desk::Trace& trace) { return trace.corrected; }) == 1);
}

TEST_CASE("a correction that cannot be is refused, and nothing is written", "[desk][patients]")
{
    Room room;
    const auto before = room.operations();
    const auto reason = [&](const records::PatientRegistered& patient) { return room.desk().correctPatient(patient, {}).error().reason; };
    auto nameless = room.known();
    nameless.name.clear();
    CHECK(reason(nameless) == Reason::notEnough);
    CHECK(reason(room.known()) == Reason::alreadyExists);
    auto unknown = room.known();
    unknown.patient = test::idOf<recovery::PatientTag>(77);
    CHECK(reason(unknown) == Reason::notFound);
    // As at registering.
    const std::string long41(41, '5');
    CHECK(reason(room.with(long41.c_str())) == room.desk().registerPatient("Odile Brandt", long41, "en").error().reason);
    room.desk().setPerson({});
    CHECK(reason(room.with("+00 555 0199")) == Reason::invalidState);
    CHECK(room.operations() == before);
}

TEST_CASE("a correction is taken back to what held before, unless it was corrected again since", "[desk][patients]")
{
    Room room;
    const auto first = room.desk().correctPatient(room.with("+00 555 0199"), {});
    REQUIRE(first);
    REQUIRE(room.desk().takeBackCorrection(room.patient, *first));
    CHECK(room.known().phone == "+00 555 0101");
    const auto corrections = room.desk().corrections(room.patient);
    REQUIRE(corrections.size() == 2);
    CHECK(corrections[1].before.phone == "+00 555 0199");
    CHECK_FALSE(corrections[1].crossed);

    CHECK(room.desk().takeBackCorrection(room.patient, *first).error().reason == Reason::alreadyExists);
    CHECK(room.desk().takeBackCorrection(room.patient, {test::idOf<envelope::DeviceTag>(9), 1}).error().reason == Reason::notFound);
    CHECK(room.known().phone == "+00 555 0101");
}

TEST_CASE("correcting a patient is open to every role, as registering is, and is no mark against one", "[desk][patients][roles]")
{
    Room room;
    REQUIRE(room.desk().describeClinic({{"Practice on the Mole", "+00 555 0110", "+00 555 0119", "112"}, "Europe/Berlin", {"Dr. Ada Lund", "Mina Orr"}}));
    REQUIRE(room.desk().giveRole("Dr. Ada Lund", records::Role::inCharge));
    REQUIRE(room.desk().giveRole("Mina Orr", records::Role::assistant));
    room.desk().setPerson("Mina Orr");
    REQUIRE(room.desk().registerPatient("Odile Brandt", "+00 555 0102", "en"));
    REQUIRE(room.desk().correctPatient(room.with("+00 555 0199"), {}));
    const auto traces = desk::traces(room.desk().vault().state(), room.desk().vault().operations());
    CHECK(traces.front().by == "Mina Orr");
    CHECK_FALSE(traces.front().beyondRole);
}

TEST_CASE("a backup is due once there is a treatment and none was made, or the last is older than seven days", "[desk][keep]")
{
    test::ClinicWorld world;
    CHECK_FALSE(world.desk.isBackupDue());  // nothing to lose
    REQUIRE(world.desk.registerPatient("Odile Brandt", "+00 555 0102", "en"));
    CHECK_FALSE(world.desk.isBackupDue());
    world.treat();
    CHECK(world.desk.isBackupDue());
    CHECK_FALSE(world.desk.lastBackup());

    const auto made = world.now();
    REQUIRE(world.desk.noteStep(records::Step::backupMade, "Dr. Ada Lund"));
    CHECK_FALSE(world.desk.isBackupDue());
    CHECK(world.desk.lastBackup()->at == made.at);
    world.clock.advance(7 * 24h);
    CHECK_FALSE(world.desk.isBackupDue());
    world.clock.advance(1ms);
    CHECK(world.desk.isBackupDue());

    // Another step is none, and a line that came late is no newer backup.
    REQUIRE(world.desk.noteStep(records::Step::passphraseChanged, "Dr. Ada Lund"));
    CHECK(world.desk.isBackupDue());
    REQUIRE(world.desk.noteStep(records::Step::backupMade, "Dr. Ada Lund", made));
    CHECK(world.desk.isBackupDue());
    REQUIRE(world.desk.noteStep(records::Step::backupMade, "Dr. Ada Lund"));
    CHECK_FALSE(world.desk.isBackupDue());
}

TEST_CASE("a backup of a clock that ran ahead silences nothing, and one made since is the last", "[desk][keep]")
{
    test::ClinicWorld world;
    world.treat();
    auto ahead = world.now();
    ahead.at += 24h * 365;
    REQUIRE(world.desk.noteStep(records::Step::backupMade, "Dr. Ada Lund", ahead));
    CHECK(world.desk.isBackupDue());
    CHECK(world.desk.lastBackup() == ahead);  // it is what is on record

    REQUIRE(world.desk.noteStep(records::Step::backupMade, "Dr. Ada Lund"));
    CHECK_FALSE(world.desk.isBackupDue());
    CHECK(world.desk.lastBackup() == world.now());
    world.clock.advance(8 * 24h);
    CHECK(world.desk.isBackupDue());

    // Clocks that differ by an hour at most are no such case.
    auto near = world.now();
    near.at += desk::Desk::backupAhead;
    REQUIRE(world.desk.noteStep(records::Step::backupMade, "Dr. Ada Lund", near));
    CHECK_FALSE(world.desk.isBackupDue());
    world.clock.turnWall(world.clock.now() - 1ms);
    CHECK(world.desk.isBackupDue());
}
