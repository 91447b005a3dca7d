// Every limit that the hub's rules promise (docs/formats/hub.md), at its edge.

#include "tests/core/mailbox/hub_rules.h"

#include <ctime>

using namespace ebbline;
using namespace ebbline::mailbox;
using namespace ebbline::test;
using namespace std::chrono_literals;

namespace {

/// How many of the calls were answered otherwise than 429, before the first that was.
template <typename Call>
int untilLimited(const Call& call, Response& limited)
{
    for (int i = 0; i < 10'000; ++i) {
        limited = call();
        if (limited.status == 429)
            return i;
    }
    return -1;
}

/// Processor time that a piece of work takes: whatever else the machine does does not count.
template <typename Work>
double costOf(const Work& work)
{
    const std::clock_t began = std::clock();
    work();
    return static_cast<double>(std::clock() - began);
}

}  // namespace

TEST_CASE("a bucket gives its tokens, then one as often as it refills", "[mailbox]")
{
    RateLimiter limiter({3, 0.5});
    const clock::Instant start{1h};
    for (int i = 0; i < 3; ++i)
        CHECK(limiter.take("a", start) == 0);
    CHECK(limiter.take("a", start) == 2);
    CHECK(limiter.take("b", start) == 0);
    CHECK(limiter.take("a", start + 1s) == 1);
    CHECK(limiter.take("a", start + 2s) == 0);
    CHECK(limiter.take("a", start + 2s) == 2);
    // Never more than it holds, and a clock that goes back gives nothing.
    for (int i = 0; i < 3; ++i)
        CHECK(limiter.take("a", start + 1h) == 0);
    CHECK(limiter.take("a", start) > 0);
}

TEST_CASE("one device may ask 120 times at once and twice a second; another is not held back", "[mailbox]")
{
    Limits limits;
    limits.perAddress = {1e6, 1e6};
    HubRules hub(limits);
    Response limited;
    CHECK(untilLimited([&] { return hub.get(hub.phone); }, limited) == 120);
    CHECK(limited.retryAfterSeconds == 1);
    CHECK(limited.body.empty());
    CHECK(hub.get(hub.desk).status == 200);
    hub.clock.advance(1s);
    CHECK(untilLimited([&] { return hub.get(hub.phone); }, limited) == 2);
}

TEST_CASE("one address may ask 600 times at once and ten times a second, signed or not", "[mailbox]")
{
    HubRules hub;
    const Request health{"GET", "/v1/health", {}, {}, {}};
    Response limited;
    CHECK(untilLimited([&] { return hub.ask(health); }, limited) == 600);
    CHECK(limited.retryAfterSeconds == 1);
    CHECK(hub.get(hub.phone).status == 429);
    CHECK(hub.get(hub.phone, "192.0.2.2").status == 200);
    hub.clock.advance(1s);
    CHECK(untilLimited([&] { return hub.ask(health); }, limited) == 10);
}

TEST_CASE("one address may try to join five times an hour, each with a code and a request", "[mailbox]")
{
    HubRules hub;
    const auto tryToJoin = [&] {
        const Response code = hub.ask({"GET", "/v1/bundles/01020304", {}, {}, {}});
        if (code.status == 429)
            return code;
        const bytes::Bytes body = bytes::Writer().raw(crypto::randomArray<32>()).block(bytes::viewOf("sealed")).bytes();
        return hub.ask({"POST", "/v1/offers/0102030405060708/enrol", {}, body, {}});
    };
    Response limited;
    CHECK(untilLimited(tryToJoin, limited) == 5);
    CHECK(limited.retryAfterSeconds == 360);
    hub.clock.advance(1h);
    CHECK(untilLimited(tryToJoin, limited) == 5);
}

TEST_CASE("a request is good for 300 seconds around the hub's clock, once", "[mailbox]")
{
    HubRules hub;
    for (const std::chrono::seconds off : {-300s, 0s, 300s})
        CHECK(hub.ask(hub.phone.request("GET", hub.path, hub.clock.now() + off)).status == 200);
    for (const std::chrono::seconds off : {-301s, 301s, -172'800s, 172'800s}) {
        const Response refused = hub.ask(hub.phone.request("GET", hub.path, hub.clock.now() + off));
        CHECK(refused.status == 401);
        CHECK(refused.hubTime == "1800000000");
    }
    const Request once = hub.phone.request("GET", hub.path, hub.clock.now());
    CHECK(hub.ask(once).status == 200);
    CHECK(hub.ask(once).status == 401);
    // Remembered for as long as the time in it is good.
    const Request early = hub.phone.request("GET", hub.path, hub.clock.now() + 299s);
    CHECK(hub.ask(early).status == 200);
    hub.clock.advance(598s);
    CHECK(hub.ask(early).status == 401);
}

TEST_CASE("a body over 300 KiB is refused", "[mailbox]")
{
    HubRules hub;
    const Request large = hub.phone.request("PUT", hub.path + "/a/1", hub.clock.now(), bytes::Bytes(maximumRequestBody + 1));
    CHECK(hub.ask(large).status == 413);
    const Request largest = hub.phone.request("PUT", hub.path + "/a/1", hub.clock.now(), bytes::Bytes(maximumRequestBody));
    CHECK(hub.ask(largest).status == 400);
}

TEST_CASE("a full mailbox has a status of its own, drops nothing and takes again once it was emptied", "[mailbox]")
{
    const Limits defaults;
    CHECK(defaults.quota.envelopes == 1000);
    CHECK(defaults.quota.bytes == 50u * 1024 * 1024);

    Limits limits;
    limits.quota = {2, 1'000'000};
    HubRules hub(limits);
    CHECK(hub.put(1).status == 200);
    CHECK(hub.put(2).status == 200);
    CHECK(hub.put(3).status == 507);
    CHECK(hub.store->usage(hub.clock.now())->envelopes == 2);
    REQUIRE(hub.store->acknowledge({hub.desk.id, hub.desk.key.publicKey(), Role::desk, hub.clinic, false}, hub.mailbox,
                                   {hub.phone.id, 1}, hub.clock.now()));

    // Kept for a week after the acknowledgement, and not a moment less.
    hub.clock.advance(24h * 7);
    REQUIRE(hub.service.tidy(hub.clock.now()));
    CHECK(hub.put(3).status == 507);
    hub.clock.advance(1ms);
    REQUIRE(hub.service.tidy(hub.clock.now()));
    CHECK(hub.put(3).status == 200);
    // What nobody acknowledged waits for as long as it takes.
    hub.clock.advance(24h * 365);
    REQUIRE(hub.service.tidy(hub.clock.now()));
    CHECK(hub.store->usage(hub.clock.now())->envelopes == 2);
    CHECK(hub.store->usage(hub.clock.now())->waitingOver90Days == 2);
}

TEST_CASE("an offer ends after ten minutes by the hub's own clock", "[mailbox]")
{
    HubRules hub;
    const auto proof = crypto::randomArray<32>();
    const bytes::Bytes offer = bytes::Writer()
                                   .raw(bytes::Array<8>{7})
                                   .raw(proof)
                                   .raw(bytes::Array<4>{7})
                                   .block(bytes::viewOf("bundle"))
                                   .raw(bytes::Array<32>{})
                                   .bytes();
    REQUIRE(hub.ask(hub.desk.request("POST", "/v1/offers", hub.clock.now(), offer)).status == 200);
    const Request code{"GET", "/v1/bundles/07000000", {}, {}, {}};
    const Request enrol{"POST", "/v1/offers/0700000000000000/enrol", {}, bytes::Writer().raw(proof).block(bytes::viewOf("sealed")).bytes(), {}};
    hub.clock.advance(10min - 1ms);
    CHECK(hub.ask(code).status == 200);
    hub.clock.advance(1ms);
    CHECK(hub.ask(code).status == 404);
    CHECK(hub.ask(enrol).status == 404);
}

TEST_CASE("a revoked device is refused with its very next request, like one that never was", "[mailbox]")
{
    HubRules hub;
    CHECK(hub.get(hub.phone).status == 200);
    REQUIRE(hub.store->revokeDevice(hub.phone.id));
    const Response revoked = hub.get(hub.phone), unknown = hub.get(Signer());
    CHECK(revoked.status == 401);
    CHECK(unknown.status == revoked.status);
    CHECK(unknown.body == revoked.body);
    CHECK(unknown.retryAfterSeconds == revoked.retryAfterSeconds);
}

TEST_CASE("a wall clock that is set back an hour holds nobody back for an hour", "[mailbox]")
{
    RateLimiter limiter({3, 0.5});
    const clock::Instant start{2h};
    for (int i = 0; i < 3; ++i)
        CHECK(limiter.take("a", start) == 0);
    CHECK(limiter.take("a", start - 1h) == 2);
    CHECK(limiter.take("a", start - 1h + 2s) == 0);
    CHECK(limiter.take("a", start - 1h + 2s) == 2);
}

TEST_CASE("many names cost each call no more than a few", "[mailbox]")
{
    const clock::Instant start{1h};
    const auto take = [&](int names) {
        RateLimiter limiter({3, 0.001});
        int refused = 0;
        for (int i = 0; i < names; ++i)
            refused += limiter.take(std::to_string(i), start) != 0 ? 1 : 0;
        CHECK(refused == 0);
    };
    const double few = costOf([&] { take(3'000); }), many = costOf([&] { take(60'000); });
    // Twenty times as many: each call looking through all of them would cost four hundred times as much.
    CHECK(many < 100 * few);
}

TEST_CASE("a nonce is remembered for its time among many, and looking it up does not slow down", "[mailbox]")
{
    Limits limits;
    limits.perAddress = limits.perDevice = {1e9, 1e9};
    HubRules hub(limits);
    const Request first = hub.phone.request("GET", hub.path, hub.clock.now());
    CHECK(hub.ask(first).status == 200);
    const auto ask = [&](int times) {
        int answered = 0;
        for (int i = 0; i < times; ++i)
            answered += hub.get(hub.phone).status == 200 ? 1 : 0;
        CHECK(answered == times);
    };
    const double few = costOf([&] { ask(2'000); }), more = costOf([&] { ask(28'000); });
    // Fourteen times as many, among as many: looking through all of them would cost two hundred times as much.
    CHECK(more < 56 * few);
    CHECK(hub.ask(first).status == 401);
}
