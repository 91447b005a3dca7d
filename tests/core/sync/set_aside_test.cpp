// What is genuine and next in its chain, and cannot be read or taken: tried, set aside in sight, never lost, never in the way.

#include "core/sync/messages.h"
#include "core/sync/outlook.h"
#include "tests/core/desk/clinic_world.h"

using namespace ebbline;
using namespace std::chrono_literals;
using patient::EntryState;
using State = sync::Outlook::State;

namespace {

struct Pair {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);
    envelope::MailboxId mailbox = phone.link()->mailbox;

    Pair()
    {
        world.syncDesk();  // the phone's acknowledgement of its course
        record();
        world.syncPhone(phone);
        world.syncDesk();
        world.syncPhone(phone);
        REQUIRE(place() == EntryState::Place::withClinic);
    }
    void record()
    {
        world.clock.advance(1min);
        REQUIRE(phone.record(world.entryOf(phone, 3, 2)));
    }
    /// The phone's next envelope, signed and chained as it should be, with these contents and for this key.
    bytes::Bytes seal(bytes::View contents, const crypto::BoxPublicKey& key, std::uint32_t epoch, const std::vector<journal::OperationId>& carried = {})
    {
        auto& vault = phone.vault();
        const auto head = vault.ownHead(mailbox);
        REQUIRE(head);
        auto sealed = envelope::seal({envelope::Kind::operations, mailbox, vault.device(), head->sequence + 1, head->hash, epoch},
                                     vault.signingKey(), {key}, contents);
        REQUIRE(sealed);
        REQUIRE(vault.storeSealed(mailbox, head->sequence + 1, *sealed, carried));
        return *sealed;
    }
    bytes::Bytes sealNonsense() { return seal(bytes::viewOf("no operations at all"), world.desk.vault().clinicEpoch().publicKey(), 1); }

    /// Runs of the desk up to the one after which something is set aside.
    void tryOut()
    {
        for (int i = 1; i < vault::Vault::mostTries; ++i) {
            CAPTURE(i);
            CHECK(world.syncDesk().setAside == 0);
            REQUIRE(world.desk.vault().setAside(mailbox)->empty());
        }
        CHECK(world.syncDesk().setAside == 1);
    }
    std::size_t entriesAtDesk() { return world.desk.course(course)->state->entries.size(); }
    EntryState::Place place() { return phone.history().front().state.place; }
    vault::Standing atDesk() { return *world.desk.vault().standing(mailbox); }
    State outlook() { return sync::outlookOf(world.desk.vault(), mailbox)->state; }
};

}  // namespace

TEST_CASE("what cannot be read is tried twenty times, then set aside in sight, and what comes after it is taken", "[sync][aside]")
{
    Pair pair;
    const bytes::Bytes odd = pair.sealNonsense();
    pair.record();
    pair.world.syncPhone(pair.phone);
    pair.tryOut();

    CHECK(pair.entriesAtDesk() == 2);
    CHECK_FALSE(pair.atDesk().gap);
    CHECK(pair.atDesk().setAside == 1);
    CHECK(pair.outlook() == State::unreadable);
    const auto aside = pair.world.desk.vault().setAside(pair.mailbox);
    REQUIRE(aside->size() == 1);
    CHECK(aside->front().envelope == odd);
    CHECK(aside->front().why == sync::unpackOperations(bytes::viewOf("no operations at all")).error().reason);

    // What comes later is taken at once, and the one that is set aside is not counted anew.
    pair.record();
    pair.world.syncPhone(pair.phone);
    CHECK(pair.world.syncDesk().setAside == 0);
    CHECK(pair.entriesAtDesk() == 3);
    CHECK(pair.atDesk().setAside == 1);
}

TEST_CASE("nothing from one that is set aside on is acknowledged, so nobody takes it for delivered", "[sync][aside]")
{
    Pair pair;
    const std::uint64_t before = pair.phone.vault().ownHead(pair.mailbox)->sequence;
    pair.sealNonsense();
    pair.record();
    pair.world.syncPhone(pair.phone);
    pair.tryOut();
    pair.world.syncPhone(pair.phone);
    CHECK(pair.phone.vault().delivered(pair.mailbox).sequence <= before);
    CHECK_FALSE(pair.phone.vault().deliveredAt(pair.mailbox, before + 1));
    CHECK(pair.phone.vault().outgoing(pair.mailbox)->size() >= 2);
    CHECK_FALSE(pair.atDesk().fork);
    CHECK_FALSE(pair.phone.vault().standing(pair.mailbox)->rolledBack);
    pair.world.clock.advance(sync::longestSilence + 1min);
    CHECK(pair.world.syncPhone(pair.phone).unproved == 1);
}

TEST_CASE("what was set aside for want of a key is taken once the key is there, and acknowledged with all after it", "[sync][aside]")
{
    Pair pair;
    const auto key = crypto::BoxKey::generate();
    constexpr std::uint32_t later = 7;
    pair.record();
    const auto waiting = pair.phone.vault().unsealed(pair.mailbox);
    REQUIRE_FALSE(waiting->empty());
    std::vector<journal::OperationId> carried;
    for (const auto& operation : *waiting)
        carried.push_back(operation.id);
    pair.seal(sync::packOperations(*waiting), key.publicKey(), later, carried);
    pair.record();
    pair.world.syncPhone(pair.phone);
    pair.tryOut();
    CHECK(pair.entriesAtDesk() == 2);
    CHECK(pair.world.desk.vault().setAside(pair.mailbox)->front().why == Reason::wrongKey);

    REQUIRE(pair.world.desk.vault().putEpoch(later, key));
    CHECK(pair.world.syncDesk().operationsReceived == waiting->size());
    CHECK(pair.entriesAtDesk() == 3);
    CHECK(pair.world.desk.vault().setAside(pair.mailbox)->empty());
    CHECK(pair.atDesk().setAside == 0);
    pair.world.syncPhone(pair.phone);
    CHECK(pair.place() == EntryState::Place::withClinic);
    CHECK(pair.phone.vault().outgoing(pair.mailbox)->empty());
    CHECK(pair.world.desk.vault().verify());
}

TEST_CASE("a hub that changes envelopes has none of them set aside, however often it shows them", "[sync][aside][errors]")
{
    Pair pair;
    pair.record();
    pair.world.syncPhone(pair.phone);
    pair.world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (request.method == "GET" && request.path.starts_with("/v1/m/") && response.body.size() > 700)
            response.body[700] ^= 0x10;
    };
    for (int i = 0; i < vault::Vault::mostTries + 5; ++i)
        CHECK(pair.world.syncDesk().setAside == 0);
    CHECK(pair.entriesAtDesk() == 1);
    CHECK(pair.atDesk().setAside == 0);
    pair.world.courier.tamper = {};
    pair.world.syncDesk();
    CHECK(pair.entriesAtDesk() == 2);
}

TEST_CASE("of a mailbox so many are set aside and no more; then the chain waits, and nothing is lost", "[sync][aside]")
{
    Pair pair;
    auto& desk = pair.world.desk.vault();
    const auto sender = pair.phone.vault().device();
    const auto put = [&] {
        const bytes::Bytes sealed = pair.sealNonsense();
        const auto header = envelope::peek(sealed);
        return desk.setAside(pair.mailbox, sender, {header->sequence, envelope::hashOf(sealed)}, sealed, Reason::malformed);
    };
    for (std::size_t i = 0; i < vault::Vault::mostSetAside; ++i)
        REQUIRE(put().value());
    const std::uint64_t head = desk.peerHead(pair.mailbox, sender)->sequence;
    CHECK_FALSE(put().value());
    CHECK(desk.peerHead(pair.mailbox, sender)->sequence == head);
    CHECK(pair.atDesk().setAside == vault::Vault::mostSetAside);
    CHECK(desk.provedHead(pair.mailbox, sender)->sequence == head - vault::Vault::mostSetAside);

    // The sender's own word that they bring nothing ends it.
    REQUIRE(desk.releaseSetAside(pair.mailbox, sender, head - 9, head));
    CHECK(pair.atDesk().setAside == vault::Vault::mostSetAside - 10);
}

TEST_CASE("an envelope that the hub refuses as it is does not hold up those after it, and waits", "[sync][aside]")
{
    Pair pair;
    const std::uint64_t refused = pair.phone.vault().ownHead(pair.mailbox)->sequence + 1;
    pair.sealNonsense();
    pair.record();
    const std::string last = "/" + std::to_string(refused);
    pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (request.method == "PUT" && request.path.ends_with(last))
            response = {413, {}, 0, {}};
    };
    const auto report = pair.world.syncPhone(pair.phone);
    CHECK(report.envelopesSent == 1);
    REQUIRE(report.problem);
    CHECK(report.problem->reason == Reason::tooLarge);
    const auto outgoing = pair.phone.vault().outgoing(pair.mailbox);
    REQUIRE(outgoing->size() == 2);
    CHECK_FALSE(outgoing->front().atHub);
    CHECK(outgoing->back().atHub);
    pair.world.courier.tamper = {};
    CHECK(pair.world.syncPhone(pair.phone).envelopesSent == 1);
}
