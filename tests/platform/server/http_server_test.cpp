// The hub's front end on a real port: what a good client gets, and what a bad one does not.

#include "platform/server/http_server.h"

#include "core/bytes/text.h"
#include "core/mailbox/embedded_store.h"
#include "tests/core/vault/folder.h"
#include "tests/platform/server/raw_client.h"

#include <random>
#include <thread>

using namespace ebbline;
using namespace ebbline::server;
using namespace std::chrono_literals;

namespace {

struct RunningHub {
    test::Folder folder;
    clock::SystemClock clock;
    std::unique_ptr<mailbox::MailStore> store = std::move(*mailbox::openEmbeddedStore(folder.path()));
    mailbox::Service service{*store, generous()};
    std::unique_ptr<HttpServer> server;

    explicit RunningHub(ServerSettings settings = {})
    {
        auto started = HttpServer::start(service, clock, settings);
        REQUIRE(started);
        server = std::move(*started);
    }
    static mailbox::Limits generous()
    {
        mailbox::Limits limits;
        limits.perAddress = {1e6, 1e6};
        limits.perDevice = {1e6, 1e6};
        return limits;
    }
    std::string ask(std::string_view request) { return test::RawClient(server->port()).ask(request); }
};

int statusOf(const std::string& response)
{
    return response.size() > 12 && response.starts_with("HTTP/1.1 ") ? std::stoi(response.substr(9, 3)) : 0;
}

std::string health(const char* rest = "\r\n")
{
    return std::string("GET /v1/health HTTP/1.1\r\nHost: hub\r\n") + rest;
}

/// A desk and a phone that the store knows, and requests in their name.
struct Member {
    crypto::SigningKey key = crypto::SigningKey::generate();
    envelope::DeviceId id = envelope::deviceIdOf(key.publicKey());

    std::string http(std::string method, std::string path, std::string query, bytes::Bytes body, clock::Instant now)
    {
        mailbox::Request request{std::move(method), std::move(path), std::move(query), std::move(body), {}};
        mailbox::signRequest(request, key, now);
        std::string text = request.method + " " + request.path + (request.query.empty() ? "" : "?" + request.query)
                           + " HTTP/1.1\r\nHost: hub\r\nEB-Auth: " + request.authorisation
                           + "\r\nContent-Length: " + std::to_string(request.body.size()) + "\r\n\r\n";
        text.append(request.body.begin(), request.body.end());
        return text;
    }
};

/// Why a hub without a certificate does not start at this address; empty if it does.
std::optional<Reason> refusal(const char* address, bool behindTlsProxy)
{
    ServerSettings settings;
    settings.address = address;
    settings.behindTlsProxy = behindTlsProxy;
    test::Folder folder;
    const clock::SystemClock clock;
    const auto store = std::move(*mailbox::openEmbeddedStore(folder.path()));
    mailbox::Service service{*store, RunningHub::generous()};
    const auto started = HttpServer::start(service, clock, settings);
    return started ? std::nullopt : std::optional(started.error().reason);
}

struct Mailboxed {
    RunningHub hub;
    Member desk, phone;
    crypto::BoxKey clinicBox = crypto::BoxKey::generate();
    envelope::MailboxId mailbox{crypto::randomArray<16>()};
    std::string path = "/v1/m/" + bytes::toHex(mailbox.view());

    Mailboxed()
    {
        const auto root = crypto::SigningKey::generate();
        const auto clinic = hub.store->addClinic(root.publicKey(), "");
        REQUIRE(clinic);
        REQUIRE(hub.store->putDevice({desk.id, desk.key.publicKey(), mailbox::Role::desk, *clinic, false}));
        REQUIRE(hub.store->putOffer({{1}, *clinic, {}, {}, {}, {}, hub.clock.now() + 10min, {}, false, {}, {}}));
        REQUIRE(hub.store->linkOffer({1}, {}, mailbox, {phone.id, phone.key.publicKey(), mailbox::Role::phone, *clinic, false}));
    }
    bytes::Bytes envelope(std::uint64_t sequence = 1)
    {
        auto sealed = envelope::seal({envelope::Kind::operations, mailbox, phone.id, sequence, {}, 1}, phone.key,
                                     {clinicBox.publicKey()}, bytes::viewOf("x"));
        REQUIRE(sealed);
        return *sealed;
    }
    std::string put(std::uint64_t sequence, const bytes::Bytes& body)
    {
        return phone.http("PUT", path + "/" + bytes::toHex(phone.id.view()) + "/" + std::to_string(sequence), {}, body,
                          hub.clock.now());
    }
};

}  // namespace

TEST_CASE("without a certificate only this machine is served, unless a proxy with TLS is said to stand before", "[hub][server]")
{
    for (const char* address : {"127.0.0.1", "127.0.0.53", "::1", "::ffff:127.0.0.1"}) {
        CAPTURE(address);
        CHECK(refusal(address, false) != Reason::refused);
    }
    for (const char* address : {"0.0.0.0", "::", "192.0.2.7", "::ffff:192.0.2.7"}) {
        CAPTURE(address);
        CHECK(refusal(address, false) == Reason::refused);
        CHECK(refusal(address, true) != Reason::refused);
    }
}

TEST_CASE("a good request is answered and the connection stays", "[server]")
{
    RunningHub hub;
    test::RawClient client(hub.server->port());

    CHECK(statusOf(client.ask(health())) == 200);
    const std::string second = client.ask(health());
    CHECK(statusOf(second) == 200);
    CHECK(second.find("EB-Time: ") != std::string::npos);
    CHECK(hub.server->figures().requests == 2);
}

TEST_CASE("framing that two readers could understand differently is refused", "[server]")
{
    RunningHub hub;
    const auto refused = [&](const std::string& headers) {
        test::RawClient client(hub.server->port());
        const std::string response = client.ask("POST /v1/desks HTTP/1.1\r\nHost: hub\r\n" + headers + "\r\n\r\n0\r\n\r\n");
        CAPTURE(headers, response);
        CHECK(statusOf(response) != 200);
        CHECK((statusOf(response) == 0 || statusOf(response) == 400));
        CHECK(client.closed());
    };
    refused("Content-Length: 5\r\nContent-Length: 6");
    refused("Content-Length: 5\r\nTransfer-Encoding: chunked");
    refused("Content-Length: -5");
    refused("Content-Length: +5");
    refused("Content-Length: 0x5");
    refused("Content-Length: 5, 5");
    refused("Transfer-Encoding: chunked, chunked");
    refused("Host: other");
    refused("Bad Header: x");
    refused(" Folded: x");
}

TEST_CASE("a header over its limit and a body over its limit are refused", "[server]")
{
    RunningHub hub;
    CHECK(statusOf(hub.ask(health(("X: " + std::string(9000, 'a') + "\r\n\r\n").c_str()))) != 200);

    const std::string large = hub.ask("POST /v1/desks HTTP/1.1\r\nHost: hub\r\nContent-Length: 20000000\r\n\r\n");
    CHECK(statusOf(large) == 413);
}

TEST_CASE("a slow header ends in a closed connection", "[server]")
{
    ServerSettings settings;
    settings.headerTime = 1s;
    RunningHub hub(settings);
    test::RawClient client(hub.server->port());
    REQUIRE(client.send("GET /v1/he"));

    const auto began = std::chrono::steady_clock::now();
    CHECK(client.closed());
    CHECK(std::chrono::steady_clock::now() - began < 3s);
}

TEST_CASE("one address cannot hold more connections than allowed", "[server]")
{
    ServerSettings settings;
    settings.connectionsPerAddress = 5;
    RunningHub hub(settings);
    std::vector<std::unique_ptr<test::RawClient>> clients;
    for (int i = 0; i < 5; ++i) {
        clients.push_back(std::make_unique<test::RawClient>(hub.server->port()));
        REQUIRE(statusOf(clients.back()->ask(health())) == 200);
    }

    test::RawClient sixth(hub.server->port());
    CHECK(statusOf(sixth.ask(health())) == 0);
    CHECK(hub.server->figures().refusedConnections >= 1);

    clients.clear();
    for (int i = 0; i < 100 && hub.server->figures().open > 0; ++i)
        std::this_thread::sleep_for(10ms);
    CHECK(statusOf(hub.ask(health())) == 200);
}

TEST_CASE("bodies that strangers announce take no more memory together than there is for them", "[server]")
{
    ServerSettings settings;
    settings.bodyBytes = 700 * 1024;
    RunningHub hub(settings);
    const std::string large = "PUT /v1/m/a/b/1 HTTP/1.1\r\nHost: hub\r\nContent-Length: 300000\r\n\r\nhalf";
    std::optional<test::RawClient> first(hub.server->port());
    first->send(large);
    test::RawClient second(hub.server->port());
    second.send(large);
    std::this_thread::sleep_for(200ms);
    const std::string refused = hub.ask(large);
    CHECK(statusOf(refused) == 503);
    CHECK(refused.find("Retry-After: ") != std::string::npos);
    // What needs no body is served, and whoever leaves makes room.
    CHECK(statusOf(hub.ask(health())) == 200);
    first.reset();
    std::this_thread::sleep_for(200ms);
    CHECK(statusOf(hub.ask(large.substr(0, large.size() - 4) + std::string(300'000, 'x'))) == 401);
}

TEST_CASE("an envelope is stored once, and other bytes in its place are refused", "[server]")
{
    Mailboxed world;
    const auto envelope = world.envelope();

    CHECK(statusOf(world.hub.ask(world.put(1, envelope))) == 200);
    CHECK(statusOf(world.hub.ask(world.put(1, envelope))) == 200);
    CHECK(statusOf(world.hub.ask(world.put(1, world.envelope()))) == 409);
    CHECK(statusOf(world.hub.ask(world.put(2, envelope))) == 400);
    CHECK(world.hub.store->usage(world.hub.clock.now())->envelopes == 1);

    const std::string pulled = world.hub.ask(world.desk.http("GET", world.path, {}, {}, world.hub.clock.now()));
    CHECK(statusOf(pulled) == 200);
    CHECK(pulled.size() > envelope.size());
}

TEST_CASE("strangers, revoked devices and replays get the same empty answer", "[server]")
{
    Mailboxed world;
    Member stranger;
    const auto now = world.hub.clock.now();
    const std::string unknown = world.hub.ask(stranger.http("GET", world.path, {}, {}, now));
    CHECK(statusOf(unknown) == 401);

    const std::string once = world.desk.http("GET", world.path, {}, {}, now);
    CHECK(statusOf(world.hub.ask(once)) == 200);
    CHECK(statusOf(world.hub.ask(once)) == 401);
    CHECK(statusOf(world.hub.ask(world.desk.http("GET", world.path, {}, {}, now - 6min))) == 401);

    const std::string elsewhere = "/v1/m/" + std::string(32, 'a');
    CHECK(statusOf(world.hub.ask(world.phone.http("GET", elsewhere, {}, {}, now))) == 404);
    REQUIRE(world.hub.store->revokeDevice(world.phone.id));
    const std::string revoked = world.hub.ask(world.phone.http("GET", world.path, {}, {}, now));
    CHECK(statusOf(revoked) == 401);
    CHECK(revoked.size() == unknown.size());
}

TEST_CASE("a waiting desk hears of a new envelope at once", "[server]")
{
    Mailboxed world;
    std::string heard;
    std::thread desk([&] {
        heard = world.hub.ask(world.desk.http("GET", world.path, "wait=20", {}, world.hub.clock.now()));
    });
    for (int i = 0; i < 300 && world.hub.server->figures().waiting == 0; ++i)
        std::this_thread::sleep_for(10ms);
    CHECK(world.hub.server->figures().waiting == 1);

    const auto began = std::chrono::steady_clock::now();
    CHECK(statusOf(world.hub.ask(world.put(1, world.envelope()))) == 200);
    desk.join();

    CHECK(std::chrono::steady_clock::now() - began < 2s);
    CHECK(statusOf(heard) == 200);
    CHECK(heard.size() > 1348);
}

TEST_CASE("nonsense of any kind stores nothing while a good client is served", "[server]")
{
    Mailboxed world;
    const auto before = *world.hub.store->usage(world.hub.clock.now());
    std::mt19937 random(20270301);  // a fixed seed: the same nonsense every time
    const std::string sound = world.put(1, world.envelope());
    std::atomic<bool> stop = false;
    std::atomic<int> served = 0, unserved = 0;
    std::thread good([&] {
        while (!stop)
            ++(statusOf(world.hub.ask(health())) == 200 ? served : unserved);
    });

    int sent = 0;
    for (; sent < 600; ++sent) {
        std::string bad = sound;
        switch (sent % 4) {
        case 0:  // cut short
            bad.resize(random() % bad.size());
            break;
        case 1:  // some bytes of the head changed
            for (int i = 0; i < 4; ++i)
                bad[random() % 300] = static_cast<char>(random());
            break;
        case 2:  // a byte of the body changed: the signature no longer holds
            bad[bad.size() - 1 - random() % 1300] ^= 1;
            break;
        default:  // noise
            bad.resize(random() % 2000);
            for (char& c : bad)
                c = static_cast<char>(random());
        }
        test::RawClient client(world.hub.server->port());
        REQUIRE(client.connected());
        (void)client.send(bad);
    }
    stop = true;
    good.join();

    CHECK(sent == 600);
    CHECK(unserved == 0);
    CHECK(served > 0);
    CHECK(world.hub.server->figures().serverErrors == 0);
    CHECK(world.hub.store->usage(world.hub.clock.now())->envelopes == before.envelopes);
    CHECK(world.hub.store->usage(world.hub.clock.now())->devices == before.devices);
    CHECK(statusOf(world.hub.ask(world.put(1, world.envelope()))) == 200);
}

TEST_CASE("stopping lets a running answer end", "[server]")
{
    Mailboxed world;
    std::string heard;
    std::thread desk([&] {
        heard = world.hub.ask(world.desk.http("GET", world.path, "wait=20", {}, world.hub.clock.now()));
    });
    for (int i = 0; i < 300 && world.hub.server->figures().waiting == 0; ++i)
        std::this_thread::sleep_for(10ms);

    world.hub.server->stop(3s);
    desk.join();

    CHECK(statusOf(heard) == 200);
    CHECK_FALSE(test::RawClient(world.hub.server->port()).connected());
}
