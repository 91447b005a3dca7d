// A clinic that asks for a newer program: an older one keeps, warns and reads as before, sends nothing, and says so. A hub can
// neither ask for it nor take it back.

#include "core/sync/least_version.h"
#include "core/bytes/reader.h"
#include "tests/core/desk/clinic_world.h"

using namespace ebbline;
using namespace std::chrono_literals;
using patient::EntryState;

namespace {

/// As a desk of a newer program does it: this one refuses to ask for more than it speaks.
struct Newer {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);

    bytes::Bytes statement(std::uint64_t number, std::uint32_t protocol)
    {
        return pairing::signStatement(pairing::LeastVersion{number, protocol, world.clock.now()}, world.desk.vault().clinicRoot());
    }
    void leave(bytes::View signedBytes)
    {
        REQUIRE(world.desk.vault().keep(sync::statementName(phone.link()->mailbox), signedBytes));
        world.syncDesk();
    }
    std::size_t entries() { return world.desk.course(course)->state->entries.size(); }
    EntryState::Place place() { return phone.history().front().state.place; }
};

}  // namespace

TEST_CASE("a phone that is too old keeps, warns and reads, sends nothing and says so, and goes on after the update", "[sync][version]")
{
    Newer clinic;
    clinic.leave(clinic.statement(1, pairing::ownProtocol + 1));
    CHECK_FALSE(clinic.phone.tooOld());
    CHECK(clinic.world.syncPhone(clinic.phone).tooOld);
    CHECK(clinic.phone.tooOld());

    auto entry = clinic.world.entryOf(clinic.phone, 9, 9);
    entry.present = {recovery::Sign::breathing};
    const auto saved = clinic.phone.record(entry);
    REQUIRE(saved);
    REQUIRE_FALSE(saved->findings.empty());
    CHECK(saved->findings.front().urgency == recovery::Urgency::emergency);
    REQUIRE(clinic.world.desk.writeMessage(clinic.course, "Please update the diary."));
    clinic.world.syncDesk();
    CHECK(clinic.world.syncPhone(clinic.phone).problem == std::nullopt);
    clinic.world.syncDesk();
    CHECK(clinic.entries() == 0);
    CHECK(clinic.place() == EntryState::Place::savedHere);
    CHECK(clinic.phone.messages().size() == 1);

    // The clinic asks for less again; it may as well be a newer program that opens this vault.
    clinic.leave(clinic.statement(2, pairing::ownProtocol));
    for (int i = 0; i < 2; ++i) {
        clinic.world.syncPhone(clinic.phone);
        clinic.world.syncDesk();
    }
    clinic.world.syncPhone(clinic.phone);
    CHECK_FALSE(clinic.phone.tooOld());
    CHECK(clinic.entries() == 1);
    CHECK(clinic.place() == EntryState::Place::withClinic);
    CHECK(clinic.phone.vault().verify());
}

TEST_CASE("the higher number counts, whatever order a hub hands them out in, and two of one number show", "[sync][version]")
{
    Newer clinic;
    clinic.leave(clinic.statement(5, pairing::ownProtocol));
    clinic.world.syncPhone(clinic.phone);
    clinic.leave(clinic.statement(4, pairing::ownProtocol + 1));
    clinic.world.syncPhone(clinic.phone);
    CHECK_FALSE(clinic.phone.tooOld());
    clinic.world.clock.advance(1s);
    clinic.leave(clinic.statement(5, pairing::ownProtocol + 1));
    CHECK(clinic.world.syncPhone(clinic.phone).forkSeen);
    CHECK_FALSE(clinic.phone.tooOld());
}

TEST_CASE("a hub cannot ask for a newer program, nor make an old one send by holding the clinic's word back for a while", "[sync][version][errors]")
{
    Newer clinic;
    // Signed by another root, or changed on the way.
    const auto other = crypto::SigningKey::generate();
    const auto mailbox = clinic.phone.link()->mailbox;
    clinic.leave(pairing::signStatement(pairing::LeastVersion{9, 9, clinic.world.clock.now()}, other));
    const auto report = clinic.world.syncPhone(clinic.phone);
    CHECK(report.quarantined == 1);
    CHECK_FALSE(report.tooOld);
    CHECK_FALSE(clinic.phone.tooOld());
    CHECK(clinic.phone.vault().quarantined(mailbox) == 1);

    Newer second;
    second.leave(second.statement(1, pairing::ownProtocol + 1));
    second.world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (request.method == "GET")
            response.body.clear();
    };
    second.world.syncPhone(second.phone);
    CHECK_FALSE(second.phone.tooOld());  // it cannot know
    second.world.courier.tamper = {};
    second.world.syncPhone(second.phone);
    CHECK(second.phone.tooOld());
    // Once known it stays, over a restart as well, and no older copy of the hub takes it back.
    second.world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (request.method == "GET")
            response.body.clear();
    };
    REQUIRE(second.phone.record(second.world.entryOf(second.phone, 1, 1)));
    second.world.syncPhone(second.phone);
    CHECK(second.phone.tooOld());
    CHECK(second.place() == EntryState::Place::savedHere);
}

TEST_CASE("a statement of a kind that this program does not know is kept, said, and holds up nothing after it", "[sync][version]")
{
    Newer clinic;
    const auto& root = clinic.world.desk.vault().clinicRoot();
    const bytes::Bytes body = bytes::Writer().raw(bytes::viewOf("EBT1")).u8(77).raw(bytes::viewOf("of tomorrow")).bytes();
    bytes::Bytes unknown = body;
    const auto signature = root.sign(pairing::statementText(body));
    unknown.insert(unknown.end(), signature.begin(), signature.end());
    clinic.leave(unknown);
    REQUIRE(clinic.world.desk.writeMessage(clinic.course, "and life goes on"));
    clinic.world.syncDesk();
    const auto report = clinic.world.syncPhone(clinic.phone);
    CHECK(report.tooOld);
    CHECK_FALSE(report.gapSeen);
    CHECK(clinic.phone.tooOld());
    CHECK(clinic.phone.messages().size() == 1);
    CHECK(clinic.phone.vault().kept(sync::newerStatementName(clinic.phone.link()->mailbox)) == unknown);
    // It asks for nothing that is known, so the patient's words still go out.
    REQUIRE(clinic.phone.record(clinic.world.entryOf(clinic.phone, 1, 1)));
    clinic.world.syncPhone(clinic.phone);
    clinic.world.syncDesk();
    CHECK(clinic.entries() == 1);
}

TEST_CASE("an owner's desk asks with the passphrase, for no more than it speaks, and every phone hears of it once", "[sync][version]")
{
    Newer clinic;
    CHECK(clinic.world.desk.requiredVersion() == 1);
    CHECK(clinic.world.desk.requireVersion(pairing::ownProtocol).error().reason == Reason::locked);
    REQUIRE(clinic.world.desk.allowStep(test::passphrase));
    CHECK(clinic.world.desk.requireVersion(pairing::ownProtocol + 1).error().reason == Reason::outOfRange);
    REQUIRE(clinic.world.desk.requireVersion(pairing::ownProtocol));
    clinic.world.syncDesk();
    clinic.world.syncPhone(clinic.phone);
    const auto root = clinic.phone.link()->clinicRoot;
    REQUIRE(sync::leastVersion(clinic.phone.vault(), root));
    CHECK(sync::leastVersion(clinic.phone.vault(), root)->protocol == pairing::ownProtocol);
    CHECK_FALSE(clinic.phone.tooOld());
    clinic.world.syncDesk();
    CHECK(clinic.world.syncDesk().envelopesSent == 0);
}
