// What every store promises: the same cases for the embedded one and for PostgreSQL.

#include "tests/platform/postgres/any_store.h"

#include <atomic>
#include <map>
#include <thread>

using namespace ebbline;
using namespace ebbline::mailbox;
using namespace ebbline::test;
using namespace std::chrono_literals;

namespace {

Kind anyKind() { return GENERATE(Kind::embedded, Kind::postgres); }

std::vector<std::string> bodiesOf(const Result<std::vector<StoredEnvelope>>& envelopes)
{
    REQUIRE(envelopes);
    std::vector<std::string> bodies;
    for (const StoredEnvelope& envelope : *envelopes)
        bodies.emplace_back(envelope.body.begin(), envelope.body.end());
    return bodies;
}

using Bodies = std::vector<std::string>;
constexpr std::size_t all = 1 << 20;

}  // namespace

TEST_CASE("a clinic is admitted once and found by its root", "[store]")
{
    AnyStore store(anyKind());
    const crypto::SigningPublicKey root{crypto::randomArray<32>()};
    CHECK(store->clinicOf(root).error().reason == Reason::notFound);
    const auto clinic = store->addClinic(root, "Mole");
    REQUIRE(clinic);
    CHECK(store->addClinic(root, "other").error().reason == Reason::alreadyExists);
    const auto other = store->addClinic({crypto::randomArray<32>()}, "");
    REQUIRE(other);
    CHECK(*other != *clinic);

    store.reopen();
    CHECK(store->clinicOf(root) == *clinic);
    CHECK(store->ready());
}

TEST_CASE("a revoked device stays revoked, however often it is put", "[store]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    const auto known = store->device(clinic.desk.id);
    REQUIRE(known);
    CHECK(known->key == clinic.desk.key);
    CHECK(known->role == Role::desk);
    CHECK(known->clinic == clinic.clinic);
    CHECK_FALSE(known->revoked);
    CHECK(store->device(clinic.phone.id)->role == Role::phone);

    REQUIRE(store->revokeDevice(clinic.desk.id));
    REQUIRE(store->putDevice(clinic.desk));
    store.reopen();
    CHECK(store->device(clinic.desk.id)->revoked);
    CHECK_FALSE(store->device(clinic.phone.id)->revoked);
    const envelope::DeviceId stranger{crypto::randomArray<16>()};
    CHECK(store->device(stranger).error().reason == Reason::notFound);
    CHECK(reasonOf(store->revokeDevice(stranger)) == Reason::notFound);
}

TEST_CASE("an envelope stands where it was put, and no other takes its place", "[store]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    CHECK(store->putEnvelope(clinic.phone, clinic.mailbox, 1, bytes::viewOf("one"), noon, roomy));
    CHECK(store->putEnvelope(clinic.phone, clinic.mailbox, 1, bytes::viewOf("one"), noon, roomy));
    CHECK(reasonOf(store->putEnvelope(clinic.phone, clinic.mailbox, 1, bytes::viewOf("ONE"), noon, roomy))
          == Reason::alreadyExists);
    CHECK(store->putEnvelope(clinic.desk, clinic.mailbox, 1, bytes::viewOf("answer"), noon, roomy));

    store.reopen();
    CHECK(bodiesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, {}, all)) == Bodies{"one"});
    CHECK(bodiesOf(store->envelopesAfter(clinic.phone, clinic.mailbox, {}, all)) == Bodies{"answer"});
    CHECK(store->usage(noon)->envelopes == 2);
    CHECK(store->usage(noon)->bytes == 9);
}

TEST_CASE("a mailbox takes what its quota allows, and what it holds already", "[store]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    const Quota three{3, 1000}, tight{1000, 10};
    for (std::uint64_t i = 1; i <= 3; ++i)
        REQUIRE(store->putEnvelope(clinic.phone, clinic.mailbox, i, bytes::viewOf("abc"), noon, three));
    CHECK(reasonOf(store->putEnvelope(clinic.phone, clinic.mailbox, 4, bytes::viewOf("abc"), noon, three)) == Reason::storageFull);
    CHECK(store->putEnvelope(clinic.phone, clinic.mailbox, 3, bytes::viewOf("abc"), noon, three));
    CHECK(reasonOf(store->putEnvelope(clinic.phone, clinic.mailbox, 3, bytes::viewOf("xyz"), noon, three)) == Reason::alreadyExists);
    CHECK(reasonOf(store->putEnvelope(clinic.phone, clinic.mailbox, 4, bytes::viewOf("ab"), noon, tight)) == Reason::storageFull);
    CHECK(store->putEnvelope(clinic.phone, clinic.mailbox, 4, bytes::viewOf("a"), noon, tight));
    CHECK(store->usage(noon)->envelopes == 4);
    CHECK(store->usage(noon)->bytes == 10);

    // A repeated or refused one is not counted, and room comes back with what is dropped.
    REQUIRE(store->acknowledge(clinic.desk, clinic.mailbox, {clinic.phone.id, 2}, noon));
    REQUIRE(store->dropAcknowledged(noon + 1s));
    CHECK(store->usage(noon)->envelopes == 2);
    CHECK(store->usage(noon)->bytes == 4);
    CHECK(store->putEnvelope(clinic.phone, clinic.mailbox, 5, bytes::viewOf("abc"), noon, three));
}

TEST_CASE("a mailbox of others is as unknown as one that is not there", "[store]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store), other(*store);
    const auto secondPhone = deviceOf(clinic.clinic, Role::phone);
    ClinicInStore::join(*store, secondPhone, {crypto::randomArray<16>()});
    REQUIRE(store->putEnvelope(clinic.phone, clinic.mailbox, 1, bytes::viewOf("one"), noon, roomy));

    for (const Device& stranger : {other.desk, other.phone, secondPhone}) {
        CHECK(reasonOf(store->putEnvelope(stranger, clinic.mailbox, 1, bytes::viewOf("x"), noon, roomy)) == Reason::notFound);
        CHECK(store->envelopesAfter(stranger, clinic.mailbox, {}, all).error().reason == Reason::notFound);
        CHECK(reasonOf(store->acknowledge(stranger, clinic.mailbox, {clinic.phone.id, 1}, noon)) == Reason::notFound);
    }
    const envelope::MailboxId nowhere{crypto::randomArray<16>()};
    CHECK(reasonOf(store->putEnvelope(clinic.desk, nowhere, 1, bytes::viewOf("x"), noon, roomy)) == Reason::notFound);
    CHECK(store->envelopesAfter(clinic.desk, nowhere, {}, all).error().reason == Reason::notFound);
    CHECK(reasonOf(store->acknowledge(clinic.desk, nowhere, {clinic.phone.id, 1}, noon)) == Reason::notFound);
    CHECK(store->withNews(other.desk)->empty());
    CHECK(store->usage(noon)->envelopes == 1);
}

TEST_CASE("a reader gets what lies past its positions, in order, in bounded portions", "[store]")
{
    AnyStore store(anyKind());
    ClinicInStore clinic(*store);
    auto secondDesk = deviceOf(clinic.clinic, Role::desk);
    REQUIRE(store->putDevice(secondDesk));
    // Put out of order: what arrives late is found by a reader whose position is before it.
    for (const std::uint64_t sequence : {2u, 3u, 1u, 10u})
        REQUIRE(store->putEnvelope(clinic.phone, clinic.mailbox, sequence,
                                   bytes::viewOf("p" + std::to_string(sequence)), noon, roomy));
    REQUIRE(store->putEnvelope(secondDesk, clinic.mailbox, 1, bytes::viewOf("d1"), noon, roomy));
    const Bodies phones{"p1", "p2", "p3", "p10"};
    const bool phoneFirst = clinic.phone.id < secondDesk.id;

    Bodies expected = phones;
    expected.insert(phoneFirst ? expected.end() : expected.begin(), "d1");
    CHECK(bodiesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, {}, all)) == expected);
    CHECK(bodiesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, {{secondDesk.id, 1}, {clinic.phone.id, 2}}, all))
          == Bodies{"p3", "p10"});
    CHECK(bodiesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, {{clinic.phone.id, 99}, {secondDesk.id, 1}}, all)).empty());
    CHECK(bodiesOf(store->envelopesAfter(clinic.phone, clinic.mailbox, {}, all)) == Bodies{"d1"});
    // At least one, then until the bytes are reached.
    const std::vector<Position> desksHeld{{secondDesk.id, 1}};
    CHECK(bodiesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, desksHeld, 1)) == Bodies{"p1"});
    CHECK(bodiesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, desksHeld, 2)) == Bodies{"p1"});
    CHECK(bodiesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, desksHeld, 3)) == Bodies{"p1", "p2"});
}

TEST_CASE("an acknowledgement never goes back, and news ends with it", "[store]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    for (std::uint64_t i = 1; i <= 3; ++i)
        REQUIRE(store->putEnvelope(clinic.phone, clinic.mailbox, i, bytes::viewOf("x"), noon, roomy));
    const std::vector<envelope::MailboxId> one{clinic.mailbox}, none;

    CHECK(store->withNews(clinic.desk) == one);
    REQUIRE(store->acknowledge(clinic.desk, clinic.mailbox, {clinic.phone.id, 3}, noon));
    CHECK(store->withNews(clinic.desk) == none);
    REQUIRE(store->acknowledge(clinic.desk, clinic.mailbox, {clinic.phone.id, 1}, noon));
    store.reopen();
    CHECK(store->withNews(clinic.desk) == none);
    // Another desk of the clinic has not seen it; the sender has no news of its own.
    CHECK(store->withNews(deviceOf(clinic.clinic, Role::desk)) == one);
    REQUIRE(store->putEnvelope(clinic.phone, clinic.mailbox, 4, bytes::viewOf("x"), noon, roomy));
    CHECK(store->withNews(clinic.desk) == one);
}

TEST_CASE("what desks write to a phone is no news to other desks, what they write to each other is", "[store]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    const Device second = deviceOf(clinic.clinic, Role::desk);
    REQUIRE(store->putDevice(second));
    const std::vector<envelope::MailboxId> none, phones{clinic.mailbox};
    REQUIRE(store->putEnvelope(clinic.desk, clinic.mailbox, 1, bytes::viewOf("x"), noon, roomy));
    CHECK(store->withNews(second) == none);
    REQUIRE(store->putEnvelope(clinic.phone, clinic.mailbox, 1, bytes::viewOf("x"), noon, roomy));
    CHECK(store->withNews(second) == phones);
    REQUIRE(store->acknowledge(second, clinic.mailbox, {clinic.phone.id, 1}, noon));

    // Between desks a mailbox belongs to the one that was invited.
    const envelope::MailboxId channel{crypto::randomArray<16>()};
    const std::vector<envelope::MailboxId> between{channel};
    ClinicInStore::join(*store, second, channel);
    REQUIRE(store->putEnvelope(clinic.desk, channel, 1, bytes::viewOf("x"), noon, roomy));
    CHECK(store->withNews(second) == between);
    REQUIRE(store->acknowledge(second, channel, {clinic.desk.id, 1}, noon));
    CHECK(store->withNews(second) == none);
    REQUIRE(store->acknowledge(clinic.desk, clinic.mailbox, {clinic.phone.id, 1}, noon));
    CHECK(store->withNews(clinic.desk) == none);
    REQUIRE(store->putEnvelope(second, channel, 1, bytes::viewOf("x"), noon, roomy));
    CHECK(store->withNews(clinic.desk) == between);
}

TEST_CASE("what a revoked desk left unread is gone and leaves room, what anybody else wrote stays", "[store]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    const Device lost = deviceOf(clinic.clinic, Role::desk);
    REQUIRE(store->putDevice(lost));
    const Quota small{4, 1'000};
    REQUIRE(store->putEnvelope(clinic.phone, clinic.mailbox, 1, bytes::viewOf("p1"), noon, small));
    for (std::uint64_t i = 1; i <= 3; ++i)
        REQUIRE(store->putEnvelope(lost, clinic.mailbox, i, bytes::viewOf("l" + std::to_string(i)), noon, small));
    REQUIRE(store->acknowledge(clinic.phone, clinic.mailbox, {lost.id, 1}, noon));
    CHECK(reasonOf(store->putEnvelope(clinic.phone, clinic.mailbox, 2, bytes::viewOf("p2"), noon, small)) == Reason::storageFull);

    REQUIRE(store->revokeDevice(lost.id));
    store.reopen();
    CHECK(bodiesOf(store->envelopesAfter(clinic.phone, clinic.mailbox, {}, all)) == Bodies{"l1"});
    CHECK(bodiesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, {{lost.id, 9}}, all)) == Bodies{"p1"});
    CHECK(store->usage(noon)->envelopes == 2);
    CHECK(store->usage(noon)->bytes == 4);
    REQUIRE(store->putEnvelope(clinic.phone, clinic.mailbox, 2, bytes::viewOf("p2"), noon, small));
    // A phone's entries are the patient's, whatever became of the phone.
    REQUIRE(store->revokeDevice(clinic.phone.id));
    CHECK(bodiesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, {{lost.id, 9}}, all)) == Bodies{"p1", "p2"});
}

TEST_CASE("an offer that is put again after a lost answer is no conflict, another one is", "[store]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    StoredOffer offer;
    offer.id = {7};
    offer.clinic = clinic.clinic;
    offer.proof = crypto::randomArray<32>();
    offer.bundle = body("bundle");
    offer.expires = noon;
    REQUIRE(store->putOffer(offer));
    offer.expires = noon + 1s;  // the hub's own clock went on
    CHECK(store->putOffer(offer));
    CHECK(store->offer(offer.id)->expires == noon);
    StoredOffer other = offer;
    other.bundle = body("other");
    CHECK(reasonOf(store->putOffer(other)) == Reason::alreadyExists);
    CHECK(store->offer(offer.id)->bundle == offer.bundle);
    other = offer;
    other.clinic = store->addClinic({crypto::randomArray<32>()}, "").value();
    CHECK(reasonOf(store->putOffer(other)) == Reason::alreadyExists);
}

TEST_CASE("what was acknowledged is kept for its time; what was not is kept", "[store]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    for (std::uint64_t i = 1; i <= 3; ++i)
        REQUIRE(store->putEnvelope(clinic.phone, clinic.mailbox, i, bytes::viewOf("x"), noon, roomy));
    REQUIRE(store->acknowledge(clinic.desk, clinic.mailbox, {clinic.phone.id, 2}, noon + 1h));
    // A sender that acknowledges its own envelopes removes none.
    REQUIRE(store->acknowledge(clinic.phone, clinic.mailbox, {clinic.phone.id, 3}, noon));

    REQUIRE(store->dropAcknowledged(noon + 1h));
    CHECK(store->usage(noon)->envelopes == 3);
    REQUIRE(store->dropAcknowledged(noon + 1h + 1ms));
    CHECK(store->usage(noon)->envelopes == 1);
    REQUIRE(store->dropAcknowledged(noon + 24h * 365));
    CHECK(bodiesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, {}, all)).size() == 1);
}

TEST_CASE("usage counts everything, and what waits for months apart", "[store]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store), other(*store);
    const auto put = [&](std::uint64_t sequence, std::chrono::days age) {
        REQUIRE(store->putEnvelope(clinic.phone, clinic.mailbox, sequence, bytes::viewOf("x"), noon - age, roomy));
    };
    std::uint64_t sequence = 0;
    for (const int days : {100, 95, 87, 70, 40, 1})
        put(++sequence, std::chrono::days(days));
    REQUIRE(store->acknowledge(clinic.desk, clinic.mailbox, {clinic.phone.id, 1}, noon));

    const auto usage = store->usage(noon);
    REQUIRE(usage);
    CHECK(usage->clinics == 2);
    CHECK(usage->devices == 4);
    CHECK(usage->mailboxes == 2);
    CHECK(usage->envelopes == 6);
    CHECK(usage->bytes == 6);
    CHECK(usage->waitingOver30Days == 4);
    CHECK(usage->waitingOver60Days == 3);
    CHECK(usage->waitingOver85Days == 2);
    CHECK(usage->waitingOver90Days == 1);
}

TEST_CASE("writers at the same time lose nothing, and a reader who follows them skips nothing", "[store]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    constexpr std::uint64_t each = 60;
    constexpr int writers = 6;
    std::vector<Device> phones;
    for (int i = 0; i < writers; ++i) {
        phones.push_back(deviceOf(clinic.clinic, Role::desk));
        REQUIRE(store->putDevice(phones.back()));
    }
    std::atomic<int> failed = 0, refused = 0, running = writers * 2;
    std::vector<std::thread> threads;
    // Two threads a sender offer the same numbers with other bytes: exactly one of them may win each.
    for (int i = 0; i < writers * 2; ++i)
        threads.emplace_back([&, i] {
            for (std::uint64_t sequence = 1; sequence <= each; ++sequence) {
                const Done put = store->putEnvelope(phones[static_cast<std::size_t>(i / 2)], clinic.mailbox, sequence,
                                                    bytes::viewOf(i % 2 ? "odd" : "even"), noon, roomy);
                if (reasonOf(put) == Reason::alreadyExists)
                    ++refused;
                else if (!put)
                    ++failed;
            }
            --running;
        });
    std::map<envelope::DeviceId, std::uint64_t> held;
    std::size_t gaps = 0, seen = 0;
    for (bool last = false; !last;) {
        last = running == 0;
        std::vector<Position> positions;
        for (const auto& [device, sequence] : held)
            positions.push_back({device, sequence});
        const auto found = store->envelopesAfter(clinic.phone, clinic.mailbox, positions, 200);
        REQUIRE(found);
        for (const StoredEnvelope& envelope : *found) {
            gaps += envelope.sequence != held[envelope.device] + 1;
            held[envelope.device] = envelope.sequence;
            ++seen;
        }
        last = last && found->empty();
    }
    for (std::thread& thread : threads)
        thread.join();

    CHECK(failed == 0);
    CHECK(refused == writers * static_cast<int>(each));
    CHECK(gaps == 0);
    CHECK(seen == writers * each);
    CHECK(store->usage(noon)->envelopes == writers * static_cast<std::int64_t>(each));
}
