// Two hubs, processes of their own, over one database: whoever asks either sees one hub.

#include "core/bytes/text.h"
#include "tests/faults/hub_load.h"
#include "tests/faults/hub_process.h"
#include "tests/platform/postgres/any_store.h"
#include "tests/platform/server/raw_client.h"

#include <thread>

using namespace ebbline;
using namespace ebbline::test;
using namespace std::chrono_literals;
using faults::Member;
using faults::statusOf;

namespace {

struct TwoHubs {
    AnyStore store{Kind::postgres};
    Member desk, phone;
    envelope::MailboxId mailbox{crypto::randomArray<16>()};
    std::string path = "/v1/m/" + bytes::toHex(mailbox.view());
    faults::HubProcess one{store.address(), {"--mailbox-envelopes", "3"}}, two{store.address(), {"--mailbox-envelopes", "3"}};
    clock::SystemClock clock;

    TwoHubs()
    {
        const std::int64_t clinic = store->addClinic({crypto::randomArray<32>()}, "").value();
        REQUIRE(store->putDevice({desk.id, desk.key.publicKey(), mailbox::Role::desk, clinic, false}));
        ClinicInStore::join(*store, {phone.id, phone.key.publicKey(), mailbox::Role::phone, clinic, false}, mailbox);
        one.start();
        two.start();
    }
    std::string ask(const faults::HubProcess& hub, const Member& who, const std::string& method, const std::string& at,
                    const std::string& query = {}, const bytes::Bytes& body = {}) const
    {
        return RawClient(hub.port(), 1, 30s).ask(who.http(method, at, query, body, clock.now()));
    }
    int put(const faults::HubProcess& hub, std::uint64_t sequence, const bytes::Bytes& sealed) const
    {
        return statusOf(ask(hub, phone, "PUT", path + "/" + bytes::toHex(phone.id.view()) + "/" + std::to_string(sequence), {}, sealed));
    }
    bytes::Bytes sealed(std::uint64_t sequence) const
    {
        return envelope::seal({envelope::Kind::operations, mailbox, phone.id, sequence, {}, 1}, phone.key,
                              {crypto::BoxKey::generate().publicKey()}, bytes::viewOf("x"))
            .value();
    }
};

}  // namespace

TEST_CASE("who waits at one hub hears at once of what came to the other", "[postgres]")
{
    TwoHubs hubs;
    std::string heard;
    std::chrono::steady_clock::time_point at;
    std::thread waiting([&] {
        heard = hubs.ask(hubs.one, hubs.desk, "GET", hubs.path, "wait=20");
        at = std::chrono::steady_clock::now();
    });
    std::this_thread::sleep_for(1s);
    const auto put = std::chrono::steady_clock::now();
    CHECK(hubs.put(hubs.two, 1, hubs.sealed(1)) == 200);
    waiting.join();
    CHECK(statusOf(heard) == 200);
    CHECK(heard.size() > 1348);
    CHECK(at > put);
    CHECK(at - put < 2s);
}

TEST_CASE("a desk that waits for its clinic at one hub hears at once of what came to the other", "[postgres]")
{
    TwoHubs hubs;
    std::string heard;
    std::chrono::steady_clock::time_point at;
    std::thread waiting([&] {
        heard = hubs.ask(hubs.one, hubs.desk, "GET", "/v1/news", "wait=20");
        at = std::chrono::steady_clock::now();
    });
    std::this_thread::sleep_for(1s);
    const auto put = std::chrono::steady_clock::now();
    CHECK(hubs.put(hubs.two, 1, hubs.sealed(1)) == 200);
    waiting.join();
    CHECK(statusOf(heard) == 200);
    CHECK(heard.ends_with(std::string(hubs.mailbox.view().begin(), hubs.mailbox.view().end())));
    CHECK(at > put);
    CHECK(at - put < 2s);
}

TEST_CASE("an envelope repeated at the other hub is the same one, and a quota is one quota", "[postgres]")
{
    TwoHubs hubs;
    const auto first = hubs.sealed(1);
    CHECK(hubs.put(hubs.one, 1, first) == 200);
    CHECK(hubs.put(hubs.two, 1, first) == 200);
    CHECK(hubs.put(hubs.two, 1, hubs.sealed(1)) == 409);
    CHECK(hubs.put(hubs.two, 2, hubs.sealed(2)) == 200);
    CHECK(hubs.put(hubs.one, 3, hubs.sealed(3)) == 200);
    CHECK(hubs.put(hubs.one, 4, hubs.sealed(4)) == 507);
    CHECK(hubs.put(hubs.two, 4, hubs.sealed(4)) == 507);
    CHECK(hubs.store->usage(noon)->envelopes == 3);
}

TEST_CASE("a device that is revoked is refused by every hub with its next request", "[postgres]")
{
    TwoHubs hubs;
    CHECK(statusOf(hubs.ask(hubs.one, hubs.phone, "GET", hubs.path)) == 200);
    CHECK(statusOf(hubs.ask(hubs.two, hubs.phone, "GET", hubs.path)) == 200);
    REQUIRE(hubs.store->revokeDevice(hubs.phone.id));
    CHECK(statusOf(hubs.ask(hubs.one, hubs.phone, "GET", hubs.path)) == 401);
    CHECK(statusOf(hubs.ask(hubs.two, hubs.phone, "GET", hubs.path)) == 401);
}
