// The hub's front end on a real port: what a good client gets, and what a bad one does not.

#include "tests/platform/server/running_hub.h"

#include <catch2/catch_test_macros.hpp>

#include <random>
#include <set>
#include <sstream>
#include <thread>

using namespace ebbline;
using namespace ebbline::server;
using namespace ebbline::test;
using namespace std::chrono_literals;

namespace {

std::string health(const char* rest = "\r\n")
{
    return std::string("GET /v1/health HTTP/1.1\r\nHost: hub\r\n") + rest;
}

/// Why a hub with these settings does not start; empty if it does.
std::optional<Reason> refusal(const ServerSettings& settings)
{
    test::Folder folder;
    const clock::SystemClock clock;
    const auto store = std::move(*mailbox::openEmbeddedStore(folder.path()));
    mailbox::Service service{*store, RunningHub::generous()};
    const auto started = HttpServer::start(service, clock, settings);
    return started ? std::nullopt : std::optional(started.error().reason);
}

server::ServerSettings on(const char* address, bool behindTlsProxy = false)
{
    server::ServerSettings settings;
    settings.address = address;
    settings.behindTlsProxy = behindTlsProxy;
    return settings;
}

}  // namespace

TEST_CASE("without a certificate only this machine is served, unless a proxy with TLS is said to stand before", "[hub][server]")
{
    for (const char* address : {"127.0.0.1", "127.0.0.53", "::1", "::ffff:127.0.0.1"}) {
        CAPTURE(address);
        CHECK(refusal(on(address)) != Reason::refused);
    }
    for (const char* address : {"0.0.0.0", "::", "192.0.2.7", "::ffff:192.0.2.7"}) {
        CAPTURE(address);
        CHECK(refusal(on(address)) == Reason::refused);
        CHECK(refusal(on(address, true)) != Reason::refused);
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

TEST_CASE("no answer names the program, its version or a reason, and none repeats what was asked", "[server]")
{
    RunningHub hub;
    Member stranger;
    const std::vector<std::string> asked{
        health(),
        "TRACE /v1/health HTTP/1.1\r\nHost: hub\r\nX-Canary: repeated\r\n\r\n",
        "OPTIONS * HTTP/1.1\r\nHost: hub\r\n\r\n",
        "GET /canary/repeated HTTP/1.1\r\nHost: hub\r\n\r\n",
        "GET /v1/bundles/nothex HTTP/1.1\r\nHost: hub\r\n\r\n",
        stranger.http("GET", "/v1/news", {}, {}, hub.clock.now()),
        "POST /v1/desks HTTP/1.1\r\nHost: hub\r\nContent-Length: -5\r\n\r\n",
    };
    for (const std::string& request : asked) {
        const std::string response = hub.ask(request);
        CAPTURE(request, response);
        CHECK(statusOf(response) != 0);
        CHECK(response.ends_with("\r\n\r\n"));  // no body
        for (const char* word : {"ebbline", "Beast", "Boost", "canary", "repeated", "nothex"})
            CHECK(response.find(word) == std::string::npos);
        // Nothing but what a client needs to read it.
        const std::set<std::string> needed{"Content-Type", "Cache-Control", "EB-Time", "Connection", "Content-Length"};
        std::istringstream lines(response.substr(response.find("\r\n") + 2));
        for (std::string line; std::getline(lines, line) && line != "\r";)
            CHECK(needed.contains(line.substr(0, line.find(':'))));
    }
    CHECK(statusOf(hub.ask(asked[1])) != 200);
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
