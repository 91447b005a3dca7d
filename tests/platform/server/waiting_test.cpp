// Long polls on a real port: who is called, at once, and who is left waiting.

#include "tests/platform/server/running_hub.h"

#include <catch2/catch_test_macros.hpp>

#include <atomic>
#include <thread>

using namespace ebbline;
using namespace ebbline::test;
using namespace std::chrono_literals;

namespace {

/// Asks, and waits for the answer for longer than a hub does.
std::string answerTo(Mailboxed& world, const std::string& request)
{
    return RawClient(world.hub.server->port(), 1, 40s).ask(request);
}

}  // namespace

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

TEST_CASE("a desk that waits for its whole clinic hears of any of its mailboxes at once, and of no other clinic's", "[server]")
{
    Mailboxed world;
    // A second clinic over the same hub.
    Member otherDesk;
    const auto otherClinic = world.hub.store->addClinic(crypto::SigningKey::generate().publicKey(), "");
    REQUIRE(otherClinic);
    REQUIRE(world.hub.store->putDevice({otherDesk.id, otherDesk.key.publicKey(), mailbox::Role::desk, *otherClinic, false}));
    std::string heard, otherHeard;
    std::atomic<bool> otherAnswered = false;
    const auto begunAt = world.hub.clock.now();
    std::thread desk([&] { heard = answerTo(world, world.desk.http("GET", "/v1/news", "wait=20", {}, begunAt)); });
    std::thread other([&] {
        otherHeard = answerTo(world, otherDesk.http("GET", "/v1/news", "wait=10", {}, begunAt));
        otherAnswered = true;
    });
    for (int i = 0; i < 300 && world.hub.server->figures().waiting < 2; ++i)
        std::this_thread::sleep_for(10ms);
    CHECK(world.hub.server->figures().waiting == 2);

    const auto began = std::chrono::steady_clock::now();
    CHECK(statusOf(world.hub.ask(world.put(1, world.envelope()))) == 200);
    desk.join();
    CHECK(std::chrono::steady_clock::now() - began < 2s);
    CHECK_FALSE(otherAnswered);
    CHECK(statusOf(heard) == 200);
    CHECK(heard.ends_with(std::string(world.mailbox.view().begin(), world.mailbox.view().end())));
    other.join();
    CHECK(statusOf(otherHeard) == 200);
    CHECK(otherHeard.ends_with("\r\n\r\n"));
    CHECK(world.hub.server->figures().waiting == 0);
}

TEST_CASE("news that a desk knows already do not end its wait, until more is put there", "[server]")
{
    Mailboxed world;
    CHECK(statusOf(world.hub.ask(world.put(1, world.envelope()))) == 200);
    const std::string query = "wait=20&known=" + mailbox::knownNews(world.mailbox.view());
    std::string heard;
    std::thread desk([&] { heard = answerTo(world, world.desk.http("GET", "/v1/news", query, {}, world.hub.clock.now())); });
    for (int i = 0; i < 300 && world.hub.server->figures().waiting == 0; ++i)
        std::this_thread::sleep_for(10ms);
    std::this_thread::sleep_for(300ms);
    CHECK(world.hub.server->figures().waiting == 1);
    const auto began = std::chrono::steady_clock::now();
    CHECK(statusOf(world.hub.ask(world.put(2, world.envelope(2)))) == 200);
    desk.join();
    CHECK(std::chrono::steady_clock::now() - began < 2s);
    CHECK(heard.ends_with(std::string(world.mailbox.view().begin(), world.mailbox.view().end())));
    // With other news than it knows it is answered at once.
    const auto again = std::chrono::steady_clock::now();
    CHECK(statusOf(world.hub.ask(world.desk.http("GET", "/v1/news", "wait=20&known=00", {}, world.hub.clock.now()))) == 200);
    CHECK(std::chrono::steady_clock::now() - again < 2s);
}

TEST_CASE("who may not ask for news waits for none", "[server]")
{
    Mailboxed world;
    Member stranger;
    const auto began = std::chrono::steady_clock::now();
    CHECK(statusOf(world.hub.ask(world.phone.http("GET", "/v1/news", "wait=20", {}, world.hub.clock.now()))) == 404);
    CHECK(statusOf(world.hub.ask(stranger.http("GET", "/v1/news", "wait=20", {}, world.hub.clock.now()))) == 401);
    CHECK(std::chrono::steady_clock::now() - began < 2s);
    CHECK(world.hub.server->figures().waiting == 0);
}

TEST_CASE("stopping answers a desk that waits for its clinic", "[server]")
{
    Mailboxed world;
    std::string heard;
    std::thread desk([&] { heard = answerTo(world, world.desk.http("GET", "/v1/news", "wait=20", {}, world.hub.clock.now())); });
    for (int i = 0; i < 300 && world.hub.server->figures().waiting == 0; ++i)
        std::this_thread::sleep_for(10ms);
    const auto began = std::chrono::steady_clock::now();
    world.hub.server->stop(5s);
    desk.join();
    CHECK(std::chrono::steady_clock::now() - began < 2s);
    CHECK(statusOf(heard) == 200);
    CHECK(heard.find("Connection: close") != std::string::npos);
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
