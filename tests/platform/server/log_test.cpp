// What an operator reads of requests: one line each, in words of the program and numbers, and nothing that a request brought.

#include "platform/server/log.h"

#include "core/mailbox/route_name.h"
#include "tests/platform/server/running_hub.h"

#include <catch2/catch_test_macros.hpp>

#include <regex>
#include <sstream>

using namespace ebbline;
using namespace ebbline::server;
using namespace ebbline::test;

namespace {

using Level = Log::Level;

struct Read {
    std::string all;
    std::vector<std::string> lines;
    std::size_t count(const std::string& part) const
    {
        return static_cast<std::size_t>(std::ranges::count_if(lines, [&](const std::string& line) { return line.find(part) != std::string::npos; }));
    }
};

/// A hub that logs at this level is asked every kind of thing; what it wrote.
Read afterVisits(Level level, std::vector<std::string>* brought = nullptr)
{
    std::ostringstream out;
    const clock::SystemClock clock;
    Log log(out, clock, level);
    ServerSettings settings;
    if (level != Level::events)
        settings.answered = [&](const Answered& answered) { log.request(answered); };
    {
        test::Folder folder;
        const auto store = std::move(*mailbox::openEmbeddedStore(folder.path()));
        mailbox::Service service{*store, RunningHub::generous()};
        const auto server = std::move(*HttpServer::start(service, clock, settings));
        const auto ask = [&](const std::string& request) { return statusOf(RawClient(server->port()).ask(request)); };

        const auto root = crypto::SigningKey::generate();
        const auto clinic = store->addClinic(root.publicKey(), "Mole");
        Member desk, stranger, revoked;
        REQUIRE(store->putDevice({desk.id, desk.key.publicKey(), mailbox::Role::desk, *clinic, false}));
        REQUIRE(store->putDevice({revoked.id, revoked.key.publicKey(), mailbox::Role::desk, *clinic, false}));
        REQUIRE(store->revokeDevice(revoked.id));
        const auto now = clock.now();
        const std::string news = "/v1/news", mailbox = "/v1/m/" + bytes::toHex(crypto::randomArray<16>());
        CHECK(ask("GET /v1/health HTTP/1.1\r\nHost: hub\r\n\r\n") == 200);
        CHECK(ask(desk.http("GET", news, {}, {}, now)) == 200);
        CHECK(ask(stranger.http("GET", news, {}, {}, now)) == 401);
        CHECK(ask(revoked.http("GET", news, {}, {}, now)) == 401);
        CHECK(ask(desk.http("GET", news, {}, {}, now - std::chrono::hours(2))) == 401);
        std::string altered = desk.http("GET", news, {}, {}, now);
        altered.replace(altered.find("/v1/news"), 8, "/v1/m/ab");
        CHECK(ask(altered) == 401);
        CHECK(ask("GET /v1/news HTTP/1.1\r\nHost: hub\r\n\r\n") == 401);
        CHECK(ask(desk.http("PUT", mailbox + "/secretword\"/1", {}, {1, 2, 3}, now)) == 400);
        CHECK(ask(desk.http("GET", mailbox, {}, {}, now)) == 404);
        CHECK(ask("GET /v1/bundles/00112233 HTTP/1.1\r\nHost: hub\r\n\r\n") == 404);
        CHECK(ask("GET /canary\"word?secretword HTTP/1.1\r\nHost: hub\r\n\r\n") == 404);
        CHECK(ask("POST /v1/desks HTTP/1.1\r\nHost: hub\r\nContent-Length: -5\r\n\r\n") == 400);
        if (brought) {
            for (const Member* each : {&desk, &stranger, &revoked})
                brought->push_back(bytes::toHex(each->id.view()));
            brought->insert(brought->end(), {mailbox, "127.0.0.1", "secretword", "canary", "00112233", bytes::toHex(root.publicKey().value)});
        }
        server->stop(std::chrono::seconds(1));
    }
    Read read{out.str(), {}};
    std::istringstream lines(read.all);
    for (std::string line; std::getline(lines, line);)
        read.lines.push_back(line);
    return read;
}

}  // namespace

TEST_CASE("whoever is not let in leaves one line with the reason, and whoever is leaves none", "[server][log]")
{
    const Read read = afterVisits(Level::refusals);
    CAPTURE(read.all);
    CHECK(read.lines.size() == 7);
    CHECK(read.count("\"event\":\"refused\"") == 7);
    CHECK(read.count("\"why\":\"unknown or revoked device\"") == 2);
    CHECK(read.count("\"why\":\"signature\"") == 1);
    CHECK(read.count("\"why\":\"stale or replayed\"") == 1);
    CHECK(read.count("\"why\":\"no signature\"") == 1);
    CHECK(read.count("\"why\":\"no such offer\"") == 1);
    CHECK(read.count("\"why\":\"not its mailbox\"") == 1);
}

TEST_CASE("each request has its line where that is asked for, what could not be read among them", "[server][log]")
{
    const Read read = afterVisits(Level::requests);
    CAPTURE(read.all);
    CHECK(read.lines.size() == 12);
    CHECK(read.count("\"event\":\"request\"") == 5);
    CHECK(read.count("\"route\":\"health.get\",\"status\":200") == 1);
    CHECK(read.count("\"route\":\"news.get\",\"status\":200") == 1);
    CHECK(read.count("\"route\":\"envelope.put\",\"status\":400") == 1);
    CHECK(read.count("\"route\":\"unknown\",\"status\":404") == 1);
    CHECK(read.count("\"route\":\"unreadable\",\"status\":400") == 1);
    CHECK(afterVisits(Level::events).all.empty());
}

TEST_CASE("a line is one object of known names, in UTC, and holds nothing that a request brought", "[server][log]")
{
    std::vector<std::string> brought;
    const Read read = afterVisits(Level::requests, &brought);
    const std::regex form(R"re(\{"at":"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z","event":"(request|refused|failed)","route":"[a-z.]+"(,"why":"[a-z' ]+")?,"status":\d{3},"ms":\d+,"bytes_in":\d+,"bytes_out":\d+\})re");
    for (const std::string& line : read.lines) {
        CAPTURE(line);
        CHECK(std::regex_match(line, form));
    }
    for (const std::string& word : brought) {
        CAPTURE(word);
        CHECK(read.all.find(word) == std::string::npos);
    }
}

TEST_CASE("every route has a word, and what is none has one for all", "[server][log]")
{
    const std::string m = "/v1/m/00112233445566778899aabbccddeeff";
    const std::vector<std::tuple<std::string, std::string, std::string>> known{
        {"GET", "/v1/health", "health.get"},
        {"POST", "/v1/desks", "desk.register"},
        {"POST", "/v1/offers", "offer.make"},
        {"GET", "/v1/bundles/aa", "bundle.get"},
        {"POST", "/v1/offers/aa/enrol", "offer.enrol"},
        {"GET", "/v1/offers/aa", "offer.get"},
        {"PUT", "/v1/offers/aa/nonce", "offer.nonce"},
        {"PUT", "/v1/offers/aa/link", "offer.link"},
        {"POST", "/v1/offers/aa/answer", "offer.answer"},
        {"GET", "/v1/news", "news.get"},
        {"POST", "/v1/ended", "ended.tell"},
        {"PUT", m + "/aa/1", "envelope.put"},
        {"GET", m, "envelopes.get"},
        {"POST", m + "/ack", "envelope.ack"},
        {"GET", m + "/blobs", "blobs.get"},
        {"PUT", m + "/blobs/aa", "blob.announce"},
        {"PUT", m + "/blobs/aa/1", "blob.put"},
        {"GET", m + "/blobs/aa/1", "blob.get"},
        {"POST", m + "/blobs/aa/ack", "blob.end"},
        {"DELETE", "/v1/health", "unknown"},
        {"GET", "/v1/health/more", "unknown"},
        {"GET", "/", "unknown"},
        {"GET", "/v1/", "unknown"},
    };
    for (const auto& [method, path, name] : known) {
        CAPTURE(method, path);
        CHECK(mailbox::routeName({method, path, {}, {}, {}}) == name);
    }
}
