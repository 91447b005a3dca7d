// The routes of blobs: docs/formats/hub.md.

#include "tests/core/mailbox/hub_rules.h"

using namespace ebbline;
using namespace ebbline::mailbox;
using namespace ebbline::test;

namespace {

struct BlobRoutes : HubRules {
    using HubRules::HubRules;
    std::string blob = path + "/blobs/" + bytes::toHex(crypto::randomArray<16>());

    Response put(const std::string& where, bytes::Bytes body) { return ask(phone.request("PUT", where, clock.now(), std::move(body))); }
    Response post(const Signer& who, const std::string& act) { return ask(who.request("POST", blob + act, clock.now())); }
    Response read(const Signer& who, const std::string& where) { return ask(who.request("GET", where, clock.now())); }
    Response begin(std::uint32_t chunks, std::uint64_t size) { return put(blob, bytes::Writer().u32(chunks).u64(size).bytes()); }
    void whole()
    {
        REQUIRE(begin(1, 100).status == 200);
        REQUIRE(put(blob + "/0", bytes::Bytes(100, 7)).status == 200);
        REQUIRE(post(phone, "/done").status == 200);
    }
};

}  // namespace

TEST_CASE("a blob goes up chunk by chunk and comes down again", "[mailbox][blobs]")
{
    BlobRoutes hub;
    const bytes::Bytes first(smallestBlobChunk + 17, 1), second(100, 2);
    const Response begun = hub.begin(2, first.size() + second.size());
    CHECK(begun.status == 200);
    CHECK(begun.body == bytes::Writer().u8(0).u32(2).u32(0).u32(1).bytes());
    CHECK(hub.put(hub.blob + "/1", second).status == 200);
    CHECK(hub.put(hub.blob + "/1", second).status == 200);
    CHECK(hub.put(hub.blob + "/1", bytes::Bytes(100, 3)).status == 409);
    CHECK(hub.post(hub.phone, "/done").status == 409);
    CHECK(hub.begin(2, first.size() + second.size()).body == bytes::Writer().u8(0).u32(1).u32(0).bytes());
    CHECK(hub.put(hub.blob + "/0", first).status == 200);
    CHECK(hub.read(hub.desk, hub.blob + "/0").status == 404);
    CHECK(hub.post(hub.phone, "/done").status == 200);
    CHECK(hub.begin(2, first.size() + second.size()).body == bytes::Writer().u8(1).u32(0).bytes());
    CHECK(bytes::toHex(hub.read(hub.desk, hub.path + "/blobs").body) == hub.blob.substr(hub.blob.size() - 32));
    CHECK(hub.read(hub.desk, hub.blob + "/0").body == first);
    CHECK(hub.read(hub.desk, hub.blob + "/1").body == second);
    CHECK(hub.read(hub.desk, hub.blob + "/2").status == 404);
}

TEST_CASE("what is said about a blob in another form is refused", "[mailbox][blobs][errors]")
{
    BlobRoutes hub;
    CHECK(hub.begin(0, 100).status == 400);
    CHECK(hub.begin(mostBlobChunks + 1, std::uint64_t{mostBlobChunks} * smallestBlobChunk + 1).status == 400);
    CHECK(hub.begin(1, 0).status == 400);
    CHECK(hub.begin(1, largestBlobChunk + 1).status == 400);
    CHECK(hub.begin(2, smallestBlobChunk).status == 400);  // two rows where one would do
    CHECK(hub.put(hub.blob, bytes::Bytes(11)).status == 400);
    CHECK(hub.put(hub.blob, bytes::Bytes(13)).status == 400);
    CHECK(hub.put(hub.path + "/blobs/" + std::string(32, '0'), bytes::Writer().u32(1).u64(100).bytes()).status == 400);
    CHECK(hub.put(hub.path + "/blobs/12", bytes::Writer().u32(1).u64(100).bytes()).status == 400);
    REQUIRE(hub.begin(2, largestBlobChunk + 1).status == 200);
    CHECK(hub.put(hub.blob + "/0", {}).status == 400);
    CHECK(hub.put(hub.blob + "/0", bytes::Bytes(largestBlobChunk + 1)).status == 413);
    CHECK(hub.put(hub.blob + "/x", bytes::Bytes(10)).status == 400);
    CHECK(hub.put(hub.blob + "/128", bytes::Bytes(10)).status == 400);
    CHECK(hub.put(hub.blob + "/2", bytes::Bytes(10)).status == 404);
    CHECK(hub.post(hub.phone, "/else").status == 404);
    CHECK(hub.ask(hub.phone.request("POST", hub.blob + "/done", hub.clock.now(), bytes::Bytes(1))).status == 400);
    CHECK(hub.begin(3, 3 * smallestBlobChunk).status == 409);
}

TEST_CASE("a stranger learns nothing about a blob, and only a desk says that it holds one", "[mailbox][blobs][errors]")
{
    BlobRoutes hub;
    hub.whole();
    const Signer stranger;
    CHECK(hub.read(stranger, hub.blob + "/0").status == 401);
    CHECK(hub.post(stranger, "/drop").status == 401);
    CHECK(hub.post(hub.phone, "/ack").status == 404);
    CHECK(hub.post(hub.desk, "/ack").status == 200);
    hub.service.tidy(hub.clock.now() + std::chrono::hours(24 * 30));
    CHECK(hub.read(hub.desk, hub.blob + "/0").status == 200);
    hub.service.tidy(hub.clock.now() + std::chrono::hours(24 * 30 + 1));
    CHECK(hub.read(hub.desk, hub.blob + "/0").status == 404);
}

TEST_CASE("what nobody asks about for 90 days goes, and what was dropped is gone at once", "[mailbox][blobs]")
{
    BlobRoutes hub;
    hub.whole();
    hub.service.tidy(hub.clock.now() + std::chrono::hours(24 * 90));
    CHECK(hub.read(hub.desk, hub.blob + "/0").status == 200);
    hub.service.tidy(hub.clock.now() + std::chrono::hours(24 * 90 + 1));
    CHECK(hub.read(hub.desk, hub.blob + "/0").status == 404);
    hub.whole();
    CHECK(hub.post(hub.phone, "/drop").status == 200);
    CHECK(hub.read(hub.desk, hub.blob + "/0").status == 404);
    CHECK(hub.post(hub.phone, "/drop").status == 200);
}

TEST_CASE("a mailbox takes 200 MiB of blobs by default, says so when it is full, and still takes envelopes", "[mailbox][blobs]")
{
    BlobRoutes hub;
    CHECK(Quota{}.blobBytes == 200u * 1024 * 1024);
    Limits small;
    small.quota.blobBytes = 1000;
    BlobRoutes full(small);
    CHECK(full.begin(1, 1000).status == 200);
    full.blob.back() = full.blob.back() == '0' ? '1' : '0';
    CHECK(full.begin(1, 1).status == 507);
    CHECK(full.HubRules::put(1).status == 200);
}

TEST_CASE("a flood of chunks takes no request away from envelopes", "[mailbox][blobs]")
{
    BlobRoutes hub;
    hub.whole();
    int taken = 0;
    while (hub.read(hub.phone, hub.blob + "/0").status == 200)
        ++taken;
    CHECK(taken > 100);
    CHECK(hub.read(hub.phone, hub.blob + "/0").status == 429);
    CHECK(hub.HubRules::put(1).status == 200);
    CHECK(hub.get(hub.phone).status == 200);
    // A path that only looks like it has the common limits.
    CHECK_FALSE(Service::isAboutBlobs(hub.phone.request("GET", "/v1/m/blobs", hub.clock.now())));
    CHECK_FALSE(Service::isAboutBlobs(hub.phone.request("GET", hub.path, hub.clock.now())));
    CHECK_FALSE(Service::writtenBy(hub.phone.request("PUT", hub.blob + "/0", hub.clock.now())));
}
