// What monitoring may see: counts, in a form that it can read, and nothing else.

#include "platform/server/metrics.h"

#include "tests/platform/server/raw_client.h"

#include <catch2/catch_test_macros.hpp>

#include <regex>
#include <sstream>

using namespace ebbline;
using namespace ebbline::server;

TEST_CASE("each figure has its help, its type and a whole number", "[server][metrics]")
{
    ServerFigures figures;
    figures.requests = 12;
    figures.waiting = 3;
    mailbox::Usage usage;
    usage.envelopes = 7;
    usage.bytes = 12'345'678'901;

    const std::string text = metricsText(figures, usage);

    CHECK(text.find("\nebbline_requests_total 12\n") != std::string::npos);
    CHECK(text.find("\nebbline_waiting_requests 3\n") != std::string::npos);
    CHECK(text.find("\nebbline_envelopes 7\n") != std::string::npos);
    CHECK(text.find("\nebbline_envelope_bytes 12345678901\n") != std::string::npos);
    // Prometheus text exposition format 0.0.4: HELP, TYPE, sample.
    std::istringstream lines(text);
    const std::regex help("# HELP ([a-z_0-9]+) .+"), type("# TYPE ([a-z_0-9]+) (counter|gauge)"), sample("([a-z_0-9]+) [0-9]+");
    int samples = 0;
    for (std::string first, second, third; std::getline(lines, first); ++samples) {
        REQUIRE(std::getline(lines, second));
        REQUIRE(std::getline(lines, third));
        std::smatch a, b, c;
        REQUIRE(std::regex_match(first, a, help));
        REQUIRE(std::regex_match(second, b, type));
        REQUIRE(std::regex_match(third, c, sample));
        CHECK(a[1] == b[1]);
        CHECK(b[1] == c[1]);
        CHECK((b[2] == "counter") == std::string(b[1]).ends_with("_total"));
    }
    CHECK(samples == 18);
}

TEST_CASE("a store that does not answer has no figures, and that is one", "[server][metrics]")
{
    const std::string text = metricsText({}, std::nullopt);
    CHECK(text.find("\nebbline_store_up 0\n") != std::string::npos);
    CHECK(text.find("ebbline_envelopes") == std::string::npos);
    CHECK(text.find("ebbline_requests_total 0") != std::string::npos);
    CHECK(metricsText({}, mailbox::Usage{}).find("\nebbline_store_up 1\n") != std::string::npos);
}

TEST_CASE("what is stored is counted once a minute at most, and a store that is away has no figures", "[server][metrics]")
{
    int counted = 0;
    bool there = true;
    clock::ManualClock clock(clock::Instant{std::chrono::hours(500'000)});
    UsageFigures figures([&] { return there; },
                         [&](clock::Instant) -> Result<mailbox::Usage> {
                             if (!there)
                                 return fail(Reason::unreachable, "away");
                             mailbox::Usage usage;
                             usage.envelopes = ++counted;
                             return usage;
                         },
                         clock);
    for (int i = 0; i < 4; ++i) {
        CHECK(figures.now()->envelopes == 1);
        clock.advance(std::chrono::seconds(14));
    }
    // A wall clock that is set tells nothing of how long it was.
    clock.turnWall(clock.now() + std::chrono::hours(2));
    CHECK(figures.now()->envelopes == 1);
    clock.advance(std::chrono::seconds(4));
    CHECK(figures.now()->envelopes == 2);

    there = false;
    CHECK_FALSE(figures.now());
    clock.advance(UsageFigures::keptFor);
    CHECK_FALSE(figures.now());
    there = true;
    CHECK(figures.now()->envelopes == 3);
}

TEST_CASE("figures are given at one path on a port of their own", "[server][metrics]")
{
    int asked = 0;
    auto metrics = MetricsServer::start("127.0.0.1", 0, [&] { return "figure " + std::to_string(++asked) + "\n"; });
    REQUIRE(metrics);
    const auto ask = [&](const char* request) { return test::RawClient((*metrics)->port()).ask(request); };

    const std::string first = ask("GET /metrics HTTP/1.1\r\nHost: hub\r\n\r\n");
    CHECK(first.starts_with("HTTP/1.1 200"));
    CHECK(first.ends_with("figure 1\n"));
    CHECK(ask("GET /metrics HTTP/1.1\r\nHost: hub\r\n\r\n").ends_with("figure 2\n"));
    CHECK(ask("GET /v1/health HTTP/1.1\r\nHost: hub\r\n\r\n").starts_with("HTTP/1.1 404"));
    CHECK(ask("POST /metrics HTTP/1.1\r\nHost: hub\r\nContent-Length: 0\r\n\r\n").starts_with("HTTP/1.1 404"));
    (void)ask("nonsense\r\n\r\n");
    CHECK(ask("GET /metrics HTTP/1.1\r\nHost: hub\r\n\r\n").ends_with("figure 3\n"));
}

TEST_CASE("a port that is taken, or no address, is said at the start", "[server][metrics]")
{
    const auto text = [] { return std::string(); };
    auto first = MetricsServer::start("127.0.0.1", 0, text);
    REQUIRE(first);
    CHECK(MetricsServer::start("nowhere at all", 0, text).error().reason == Reason::malformed);
    CHECK(MetricsServer::start("192.0.2.77", 9101, text).error().reason == Reason::unreachable);
}
