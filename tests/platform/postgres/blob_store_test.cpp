// What every store promises about blobs: the same cases for the embedded one and for PostgreSQL.

#include "tests/platform/postgres/any_store.h"

#include <random>

using namespace ebbline;
using namespace ebbline::mailbox;
using namespace ebbline::test;
using namespace std::chrono_literals;

namespace {

Kind anyKind() { return GENERATE(Kind::embedded, Kind::postgres); }

using Numbers = std::vector<std::uint32_t>;

struct Blob {
    BlobId id{crypto::randomArray<16>()};
    std::vector<bytes::Bytes> chunks;
    BlobShape shape() const
    {
        BlobShape shape{static_cast<std::uint32_t>(chunks.size()), 0};
        for (const bytes::Bytes& chunk : chunks)
            shape.size += chunk.size();
        return shape;
    }
    explicit Blob(std::size_t count = 3)
    {
        for (std::size_t i = 0; i < count; ++i)
            chunks.emplace_back(i + 1 < count ? smallestBlobChunk + 17 : 100, static_cast<std::uint8_t>(i + 1));
    }
};

void putWhole(MailStore& store, const ClinicInStore& clinic, const Blob& blob, clock::Instant at = noon)
{
    REQUIRE(store.beginBlob(clinic.phone, clinic.mailbox, blob.id, blob.shape(), at, roomy));
    for (std::uint32_t i = 0; i < blob.chunks.size(); ++i)
        REQUIRE(store.putChunk(clinic.phone, clinic.mailbox, blob.id, i, blob.chunks[i], at));
    REQUIRE(store.finishBlob(clinic.phone, clinic.mailbox, blob.id, at));
}

Reason reasonOf(const auto& result)
{
    return result ? Reason{} : result.error().reason;
}

}  // namespace

TEST_CASE("a blob is put chunk by chunk in any order, over restarts, and read once it is finished", "[store][blobs]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    const Blob blob;
    const auto begun = store->beginBlob(clinic.phone, clinic.mailbox, blob.id, blob.shape(), noon, roomy);
    REQUIRE(begun);
    CHECK_FALSE(begun->complete);
    CHECK(begun->missing == Numbers{0, 1, 2});
    REQUIRE(store->putChunk(clinic.phone, clinic.mailbox, blob.id, 2, blob.chunks[2], noon));
    CHECK(reasonOf(store->finishBlob(clinic.phone, clinic.mailbox, blob.id, noon)) == Reason::alreadyExists);
    store.reopen();
    CHECK(store->beginBlob(clinic.phone, clinic.mailbox, blob.id, blob.shape(), noon, roomy)->missing == Numbers{0, 1});
    REQUIRE(store->putChunk(clinic.phone, clinic.mailbox, blob.id, 0, blob.chunks[0], noon));
    CHECK(store->beginBlob(clinic.phone, clinic.mailbox, blob.id, blob.shape(), noon, roomy)->missing == Numbers{1});
    REQUIRE(store->putChunk(clinic.phone, clinic.mailbox, blob.id, 1, blob.chunks[1], noon));

    // Nobody reads half a blob.
    CHECK(store->finishedBlobs(clinic.desk, clinic.mailbox)->empty());
    CHECK(reasonOf(store->chunk(clinic.desk, clinic.mailbox, blob.id, 0)) == Reason::notFound);
    REQUIRE(store->finishBlob(clinic.phone, clinic.mailbox, blob.id, noon));
    REQUIRE(store->finishBlob(clinic.phone, clinic.mailbox, blob.id, noon));
    store.reopen();
    CHECK(store->finishedBlobs(clinic.desk, clinic.mailbox) == std::vector<BlobId>{blob.id});
    for (std::uint32_t i = 0; i < 3; ++i)
        CHECK(store->chunk(clinic.desk, clinic.mailbox, blob.id, i) == blob.chunks[i]);
    CHECK(reasonOf(store->chunk(clinic.desk, clinic.mailbox, blob.id, 3)) == Reason::notFound);
    const auto whole = store->beginBlob(clinic.phone, clinic.mailbox, blob.id, blob.shape(), noon, roomy);
    REQUIRE(whole);
    CHECK(whole->complete);
    CHECK(whole->missing.empty());
}

TEST_CASE("the same chunk again is no error; another under its number, another shape, more than announced are", "[store][blobs][errors]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    const Blob blob;
    const auto put = [&](std::uint32_t place, const bytes::Bytes& body) {
        return reasonOf(store->putChunk(clinic.phone, clinic.mailbox, blob.id, place, body, noon));
    };
    CHECK(put(0, blob.chunks[0]) == Reason::notFound);  // not announced
    REQUIRE(store->beginBlob(clinic.phone, clinic.mailbox, blob.id, blob.shape(), noon, roomy));
    CHECK(put(0, blob.chunks[0]) == Reason{});
    CHECK(put(0, blob.chunks[0]) == Reason{});
    bytes::Bytes other = blob.chunks[0];
    other.back() ^= 1;
    CHECK(put(0, other) == Reason::alreadyExists);
    CHECK(put(3, blob.chunks[2]) == Reason::notFound);
    CHECK(put(1, blob.chunks[1]) == Reason{});
    CHECK(put(2, bytes::Bytes(101, 9)) == Reason::notFound);
    CHECK(put(2, blob.chunks[2]) == Reason{});
    BlobShape shape = blob.shape();
    ++shape.size;
    CHECK(reasonOf(store->beginBlob(clinic.phone, clinic.mailbox, blob.id, shape, noon, roomy)) == Reason::alreadyExists);
    REQUIRE(store->finishBlob(clinic.phone, clinic.mailbox, blob.id, noon));
    CHECK(put(0, other) == Reason::alreadyExists);
    CHECK(put(0, blob.chunks[0]) == Reason{});
}

TEST_CASE("room for blobs is reserved when they are announced and given back when they go", "[store][blobs]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    const Blob first, second;
    Quota quota;
    quota.blobBytes = first.shape().size + 50;
    const auto begin = [&](const Blob& blob) {
        return reasonOf(store->beginBlob(clinic.phone, clinic.mailbox, blob.id, blob.shape(), noon, quota));
    };
    CHECK(begin(first) == Reason{});
    CHECK(begin(second) == Reason::storageFull);
    CHECK(begin(first) == Reason{});  // asking again takes no more room
    CHECK(store->usage(noon)->blobs == 1);
    CHECK(store->usage(noon)->blobBytes == static_cast<std::int64_t>(first.shape().size));
    // Envelopes have room of their own.
    CHECK(store->putEnvelope(clinic.phone, clinic.mailbox, 1, bytes::viewOf("sealed"), noon, quota));
    REQUIRE(store->dropBlob(clinic.phone, clinic.mailbox, first.id));
    REQUIRE(store->dropBlob(clinic.phone, clinic.mailbox, first.id));
    CHECK(store->usage(noon)->blobs == 0);
    CHECK(store->usage(noon)->blobBytes == 0);
    CHECK(begin(second) == Reason{});
    quota.blobBytes = 1 << 30;
    quota.blobs = 1;
    CHECK(begin(first) == Reason::storageFull);
}

TEST_CASE("blobs are for the devices of their mailbox, and stranger and unknown look the same", "[store][blobs][errors]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store), other(*store);
    const Device neighbour = deviceOf(clinic.clinic, Role::phone);
    ClinicInStore::join(*store, neighbour, {crypto::randomArray<16>()});
    const Blob blob;
    putWhole(*store, clinic, blob);
    for (const Device& stranger : {neighbour, other.phone, other.desk}) {
        CHECK(reasonOf(store->beginBlob(stranger, clinic.mailbox, blob.id, blob.shape(), noon, roomy)) == Reason::notFound);
        CHECK(reasonOf(store->putChunk(stranger, clinic.mailbox, blob.id, 0, blob.chunks[0], noon)) == Reason::notFound);
        CHECK(reasonOf(store->finishBlob(stranger, clinic.mailbox, blob.id, noon)) == Reason::notFound);
        CHECK(reasonOf(store->chunk(stranger, clinic.mailbox, blob.id, 0)) == Reason::notFound);
        CHECK(reasonOf(store->finishedBlobs(stranger, clinic.mailbox)) == Reason::notFound);
        CHECK(reasonOf(store->acknowledgeBlob(stranger, clinic.mailbox, blob.id, noon)) == Reason::notFound);
        CHECK(reasonOf(store->dropBlob(stranger, clinic.mailbox, blob.id)) == Reason::notFound);
    }
    // The same name in another mailbox is another blob.
    CHECK(reasonOf(store->chunk(other.desk, other.mailbox, blob.id, 0)) == Reason::notFound);
    CHECK(store->beginBlob(other.phone, other.mailbox, blob.id, blob.shape(), noon, roomy)->missing.size() == 3);
    CHECK(store->chunk(clinic.desk, clinic.mailbox, blob.id, 0) == blob.chunks[0]);
}

TEST_CASE("a blob goes some time after a desk holds it, or after nobody asks for it any more", "[store][blobs]")
{
    AnyStore store(anyKind());
    const ClinicInStore clinic(*store);
    const Blob held, waiting, forgotten;
    putWhole(*store, clinic, held);
    putWhole(*store, clinic, waiting);
    REQUIRE(store->beginBlob(clinic.phone, clinic.mailbox, forgotten.id, forgotten.shape(), noon - 100h, roomy));
    REQUIRE(store->putChunk(clinic.phone, clinic.mailbox, forgotten.id, 0, forgotten.chunks[0], noon - 90h));
    REQUIRE(store->acknowledgeBlob(clinic.desk, clinic.mailbox, held.id, noon + 1h));
    REQUIRE(store->acknowledgeBlob(clinic.desk, clinic.mailbox, held.id, noon + 50h));  // the first time counts
    REQUIRE(store->acknowledgeBlob(clinic.desk, clinic.mailbox, forgotten.id, noon));   // not finished: nobody holds it

    REQUIRE(store->dropBlobs(noon + 1h, noon - 90h));
    CHECK(store->usage(noon)->blobs == 3);
    REQUIRE(store->dropBlobs(noon + 2h, noon - 89h));
    CHECK(store->finishedBlobs(clinic.desk, clinic.mailbox) == std::vector<BlobId>{waiting.id});
    CHECK(reasonOf(store->chunk(clinic.desk, clinic.mailbox, held.id, 0)) == Reason::notFound);
    CHECK(store->usage(noon)->blobs == 1);
    CHECK(store->usage(noon)->blobBytes == static_cast<std::int64_t>(waiting.shape().size));
    // The phone has it still: it is announced anew, from the beginning.
    CHECK(store->beginBlob(clinic.phone, clinic.mailbox, forgotten.id, forgotten.shape(), noon, roomy)->missing.size() == 3);
    // Asking keeps what waits.
    REQUIRE(store->beginBlob(clinic.phone, clinic.mailbox, waiting.id, waiting.shape(), noon + 500h, roomy));
    REQUIRE(store->dropBlobs(noon, noon + 400h));
    CHECK(store->finishedBlobs(clinic.desk, clinic.mailbox) == std::vector<BlobId>{waiting.id});
}

TEST_CASE("both stores give the same answers to any course of calls about blobs", "[store][blobs]")
{
    AnyStore embedded(Kind::embedded), database(Kind::postgres);
    const ClinicInStore one(*embedded), two(*database);
    const std::vector<Blob> blobs{Blob(1), Blob(2), Blob(3)};
    std::mt19937 random(20'261);
    Quota quota;
    quota.blobBytes = 250'000;
    std::size_t worked = 0;
    for (int step = 0; step < 400; ++step) {
        const Blob& blob = blobs[random() % blobs.size()];
        const auto act = random() % 100;
        const auto place = static_cast<std::uint32_t>(random() % 4);
        const bytes::Bytes body = random() % 8 == 0 ? bytes::Bytes(10, 1) : blob.chunks[place % blob.chunks.size()];
        const clock::Instant at = noon + std::chrono::hours(step);
        const auto answers = [&](MailStore& store, const ClinicInStore& clinic) -> std::pair<Reason, std::size_t> {
            const auto& [id, chunks] = blob;
            if (act < 30) {
                const auto begun = store.beginBlob(clinic.phone, clinic.mailbox, id, blob.shape(), at, quota);
                return {reasonOf(begun), begun ? begun->missing.size() * 2 + (begun->complete ? 1 : 0) : 0};
            }
            if (act < 60)
                return {reasonOf(store.putChunk(clinic.phone, clinic.mailbox, id, place, body, at)), 0};
            if (act < 75)
                return {reasonOf(store.finishBlob(clinic.phone, clinic.mailbox, id, at)), 0};
            if (act < 85) {
                const auto chunk = store.chunk(clinic.desk, clinic.mailbox, id, place);
                return {reasonOf(chunk), chunk ? chunk->size() : 0};
            }
            if (act < 92)
                return {reasonOf(store.acknowledgeBlob(clinic.desk, clinic.mailbox, id, at)), 0};
            if (act < 95)
                return {reasonOf(store.dropBlob(clinic.phone, clinic.mailbox, id)), 0};
            const Done dropped = store.dropBlobs(at - 20h, at - 60h);
            const auto usage = store.usage(at);
            return {reasonOf(dropped), static_cast<std::size_t>(usage->blobs * 1'000'000 + usage->blobBytes)};
        };
        CAPTURE(step, act, place);
        const auto expected = answers(*embedded, one);
        CHECK(answers(*database, two) == expected);
        worked += expected.first == Reason{} ? 1 : 0;
    }
    CHECK(worked > 100);
}
