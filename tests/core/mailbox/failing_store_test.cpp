// A store that cannot be reached: every route says "later", none says "no".

#include "tests/core/mailbox/hub_rules.h"

using namespace ebbline;
using namespace ebbline::mailbox;
using namespace ebbline::test;

namespace {

class FailingStore final : public MailStore {
public:
    Result<std::int64_t> addClinic(const crypto::SigningPublicKey&, const std::string&) override { return gone(); }
    Result<std::int64_t> clinicOf(const crypto::SigningPublicKey&) override { return gone(); }
    Done putDevice(const Device&) override { return gone(); }
    Result<Device> device(const envelope::DeviceId& id) override
    {
        if (known && known->id == id)
            return *known;
        return gone();
    }
    Done revokeDevice(const envelope::DeviceId&) override { return gone(); }
    Done putOffer(const StoredOffer&) override { return gone(); }
    Result<StoredOffer> offer(const OfferId&) override { return gone(); }
    Result<StoredOffer> offerByLocator(const bytes::Array<4>&) override { return gone(); }
    Done takeOffer(const OfferId&, bytes::View) override { return gone(); }
    Done answerOffer(const OfferId&, bytes::View) override { return gone(); }
    Done linkOffer(const OfferId&, bytes::View, const envelope::MailboxId&, const Device&) override { return gone(); }
    Done dropOffersBefore(clock::Instant) override { return gone(); }
    Done putEnvelope(const Device&, const envelope::MailboxId&, std::uint64_t, bytes::View, clock::Instant, const Quota&) override
    {
        return gone();
    }
    Result<std::vector<StoredEnvelope>> envelopesAfter(const Device&, const envelope::MailboxId&, const std::vector<Position>&,
                                                       std::size_t) override
    {
        return gone();
    }
    Done acknowledge(const Device&, const envelope::MailboxId&, const Position&, clock::Instant) override { return gone(); }
    Result<std::vector<envelope::MailboxId>> withNews(const Device&) override { return gone(); }
    Done dropAcknowledged(clock::Instant) override { return gone(); }
    Result<BlobStanding> beginBlob(const Device&, const envelope::MailboxId&, const BlobId&, const BlobShape&, clock::Instant,
                                   const Quota&) override
    {
        return gone();
    }
    Done putChunk(const Device&, const envelope::MailboxId&, const BlobId&, std::uint32_t, bytes::View, clock::Instant) override
    {
        return gone();
    }
    Done finishBlob(const Device&, const envelope::MailboxId&, const BlobId&, clock::Instant) override { return gone(); }
    Result<bytes::Bytes> chunk(const Device&, const envelope::MailboxId&, const BlobId&, std::uint32_t) override { return gone(); }
    Result<std::vector<BlobId>> finishedBlobs(const Device&, const envelope::MailboxId&) override { return gone(); }
    Done acknowledgeBlob(const Device&, const envelope::MailboxId&, const BlobId&, clock::Instant) override { return gone(); }
    Done dropBlob(const Device&, const envelope::MailboxId&, const BlobId&) override { return gone(); }
    Done dropBlobs(clock::Instant, clock::Instant) override { return gone(); }
    Done ready() override { return gone(); }
    Result<Usage> usage(clock::Instant) override { return gone(); }
    void whenOthersWrite(Heard) override {}

    std::optional<Device> known;  ///< the one thing that it still finds
    bool throws = false;

private:
    std::unexpected<Error> gone() const
    {
        if (throws)
            throw std::bad_alloc();
        return fail(Reason::storageFailed, "gone");
    }
};

}  // namespace

TEST_CASE("while the store is away every route answers 503 and when to come back", "[mailbox]")
{
    HubRules hub;
    FailingStore store;
    Service service(store, {});
    const auto check = [&](const Request& request) {
        CAPTURE(request.method, request.path);
        const Response response = service.handle(request, "192.0.2.1", hub.clock.now());
        CHECK(response.status == 503);
        CHECK(response.retryAfterSeconds > 0);
        CHECK(response.body.empty());
    };
    const bytes::Bytes proof = bytes::Writer().raw(bytes::Array<32>{}).bytes();
    const bytes::Bytes enrolment = bytes::Writer().raw(bytes::Array<32>{}).block(bytes::viewOf("x")).bytes();
    bytes::Bytes registration(129);
    registration[0] = 1;
    const std::string offer = "/v1/offers/0102030405060708", sender = bytes::toHex(hub.phone.id.view());

    // Nobody has to be known.
    CHECK(service.handle({"GET", "/v1/health", {}, {}, {}}, "192.0.2.1", hub.clock.now()).status == 503);
    check({"POST", "/v1/desks", {}, registration, {}});
    check({"GET", "/v1/bundles/01020304", {}, {}, {}});
    check({"POST", offer + "/enrol", {}, enrolment, {}});
    check({"POST", offer + "/answer", {}, proof, {}});
    // Whether the device is known cannot be said.
    check(hub.phone.request("GET", hub.path, hub.clock.now()));

    // It is known, and nothing else works.
    store.known = Device{hub.desk.id, hub.desk.key.publicKey(), Role::desk, hub.clinic, false};
    const bytes::Bytes newOffer =
        bytes::Writer().raw(bytes::Array<8>{}).raw(bytes::Array<32>{}).raw(bytes::Array<4>{}).block({}).raw(bytes::Array<32>{}).bytes();
    check(hub.desk.request("POST", "/v1/offers", hub.clock.now(), newOffer));
    check(hub.desk.request("GET", offer, hub.clock.now()));
    check(hub.desk.request("PUT", offer + "/nonce", hub.clock.now(), bytes::Bytes(16)));
    check(hub.desk.request("PUT", offer + "/link", hub.clock.now(), bytes::Bytes(60)));
    check(hub.desk.request("GET", "/v1/news", hub.clock.now()));
    check(hub.desk.request("POST", "/v1/ended", hub.clock.now(), bytes::Writer().raw(bytes::Array<32>{}).block(bytes::Bytes(93)).bytes()));
    check(hub.desk.request("GET", hub.path, hub.clock.now()));
    const std::string blob = hub.path + "/blobs/" + std::string(31, '0') + "1";
    check(hub.desk.request("GET", hub.path + "/blobs", hub.clock.now()));
    check(hub.desk.request("PUT", blob, hub.clock.now(), bytes::Writer().u32(1).u64(100).bytes()));
    check(hub.desk.request("PUT", blob + "/0", hub.clock.now(), bytes::Bytes(100)));
    check(hub.desk.request("GET", blob + "/0", hub.clock.now()));
    for (const char* act : {"/done", "/drop", "/ack"})
        check(hub.desk.request("POST", blob + act, hub.clock.now()));
    check(hub.desk.request("POST", hub.path + "/ack", hub.clock.now(), bytes::Bytes(24)));
    store.known = Device{hub.phone.id, hub.phone.key.publicKey(), Role::phone, hub.clinic, false};
    check(hub.phone.request("PUT", hub.path + "/" + sender + "/1", hub.clock.now(), hub.sealed(1)));
}

TEST_CASE("a request that finds no memory is answered, and the next one is served", "[mailbox]")
{
    HubRules hub;
    FailingStore store;
    Service service(store, {});
    store.throws = true;
    const Response broken = service.handle(hub.phone.request("GET", hub.path, hub.clock.now()), "192.0.2.1", hub.clock.now());
    CHECK(broken.status == 503);
    CHECK(broken.retryAfterSeconds > 0);
    CHECK(broken.body.empty());
    store.throws = false;
    store.known = Device{hub.phone.id, hub.phone.key.publicKey(), Role::phone, hub.clinic, false};
    CHECK(service.handle(hub.phone.request("GET", hub.path, hub.clock.now()), "192.0.2.1", hub.clock.now()).status == 503);
}
