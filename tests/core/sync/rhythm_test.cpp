// When a program turns to its hub next: what may not be too late, what may not be too often, and what a hub may ask.

#include "core/sync/rhythm.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using namespace std::chrono_literals;
using sync::Rhythm;
using What = Rhythm::What;

namespace {

constexpr auto minute = std::chrono::milliseconds(60'000);

sync::Report good(std::size_t received = 0)
{
    sync::Report report;
    report.reached = true;
    report.envelopesReceived = received;
    return report;
}

sync::Report unreached(std::chrono::seconds retryAfter = 0s)
{
    sync::Report report;
    report.problem = Error{retryAfter.count() > 0 ? Reason::tooSoon : Reason::unreachable, {}};
    report.retryAfter = retryAfter;
    return report;
}

}  // namespace

TEST_CASE("after a good run it waits at the hub, again and again, and looks when the interval is over", "[sync][rhythm]")
{
    Rhythm rhythm(minute);
    auto next = rhythm.afterRun(good(), 0.5);
    CHECK(next.what == What::wait);
    CHECK(next.in == 0ms);
    CHECK(next.atMost == 25s);
    next = rhythm.afterWait({false}, 25s, 0.5);
    CHECK(next.what == What::wait);
    CHECK(next.atMost == 25s);
    next = rhythm.afterWait({false}, 25s, 0.5);
    CHECK(next.what == What::wait);
    CHECK(next.atMost == 10s);
    next = rhythm.afterWait({false}, 10s, 0.5);
    CHECK(next.what == What::run);
    CHECK(next.in == 0ms);
}

TEST_CASE("what arrives is fetched at once", "[sync][rhythm]")
{
    Rhythm rhythm(minute);
    for (int i = 0; i < 20; ++i) {
        REQUIRE(rhythm.afterRun(good(1), 0.5).what == What::wait);
        const auto next = rhythm.afterWait({true}, 1ms, 0.5);
        CHECK(next.what == What::run);
        CHECK(next.in == 0ms);
    }
}

TEST_CASE("a hub that calls and has nothing keeps nobody asking: its calls are answered ever later", "[sync][rhythm]")
{
    Rhythm rhythm(minute);
    std::chrono::milliseconds passed{0};
    int questions = 0;
    (void)rhythm.afterRun(good(), 0.999);
    for (; passed < 60min; ++questions) {
        const auto next = rhythm.afterWait({true}, 0ms, 0.999);
        REQUIRE(next.what == What::run);
        passed += next.in;
        auto after = rhythm.afterRun(good(), 0.999);
        while (after.what == What::run) {
            passed += after.in;
            REQUIRE(after.in > 0ms);
            after = rhythm.afterRun(good(), 0.999);
            ++questions;
        }
        passed += after.in;
    }
    // Some in the beginning, then a look and a call for each minute.
    CHECK(questions <= 2 * 60 + 8);
    // Once something comes, it is heard at once again.
    (void)rhythm.afterWait({true}, 0ms, 0.5);
    const auto next = rhythm.afterRun(good(1), 0.5);
    CHECK(next.what == What::wait);
    CHECK(next.in == 0ms);
}

TEST_CASE("a hub that does not wait, or is being stopped, is looked at as often as ever", "[sync][rhythm]")
{
    Rhythm rhythm(30s);
    std::chrono::milliseconds passed{0};
    int waits = 0;
    auto next = rhythm.afterRun(good(), 0.999);
    while (next.what == What::wait) {
        passed += next.in;
        ++waits;
        next = rhythm.afterWait({false}, 0ms, 0.999);
    }
    passed += next.in;
    CHECK(next.what == What::run);
    CHECK(passed <= 30s);
    CHECK(passed > 25s);
    CHECK(waits <= 5);
}

TEST_CASE("a hub out of reach is asked ever more rarely, at random moments, and never more than fifteen minutes later", "[sync][rhythm]")
{
    const double random = GENERATE(0.0, 0.25, 0.999);
    Rhythm rhythm(minute);
    for (int failures = 1; failures < 40; ++failures) {
        const auto next = rhythm.afterRun(unreached(), random);
        CHECK(next.what == What::run);
        CHECK_FALSE(next.leaveAlone);
        CHECK(next.in >= 1s);
        CHECK(next.in == std::max<std::chrono::milliseconds>(1s, sync::backOff(failures, random)));
        CHECK(next.in <= 15min);
    }
    rhythm.forgetFailures();
    CHECK(rhythm.afterRun(unreached(), 0.999).in <= 2s);
    CHECK(rhythm.afterRun(good(), random).what == What::wait);
    CHECK(rhythm.afterRun(unreached(), 0.999).in <= 2s);
}

TEST_CASE("a hub that asks to be left alone is, for as long as it asks and an hour at most", "[sync][rhythm]")
{
    Rhythm rhythm(30s);
    auto next = rhythm.afterRun(unreached(90s), 0.5);
    CHECK(next.leaveAlone);
    CHECK(next.in >= 90s);
    CHECK(next.in <= 91s);
    next = rhythm.afterRun(unreached(1'000'000s), 0.5);
    CHECK(next.leaveAlone);
    CHECK(next.in <= 60min + 1s);
    // A run that got somewhere before the limit ended it, and a wait, are no different.
    auto limited = unreached(40s);
    limited.reached = true;
    CHECK(rhythm.afterRun(limited, 0.0).in == 40s);
    CHECK(rhythm.afterRun(limited, 0.0).leaveAlone);
    next = rhythm.afterWait({fail(Reason::tooSoon, "7"), 7s}, 0ms, 0.0);
    CHECK(next.what == What::run);
    CHECK(next.leaveAlone);
    CHECK(next.in == 7s);
    // Two who were told the same do not come back at the same moment.
    CHECK(rhythm.afterRun(limited, 0.1).in != rhythm.afterRun(limited, 0.9).in);
}

TEST_CASE("one mailbox that is refused or full does not slow down the others", "[sync][rhythm]")
{
    Rhythm rhythm(30s);
    auto report = good(2);
    report.problem = Error{Reason::storageFull, {}};
    for (int i = 0; i < 10; ++i) {
        const auto next = rhythm.afterRun(report, 0.999);
        CHECK(next.what == What::wait);
        CHECK(next.in == 0ms);
    }
}

TEST_CASE("a wait that breaks off is followed by a look soon, which then decides", "[sync][rhythm]")
{
    Rhythm rhythm(minute);
    (void)rhythm.afterRun(good(), 0.5);
    const auto next = rhythm.afterWait({fail(Reason::unreachable, {})}, 3s, 0.999);
    CHECK(next.what == What::run);
    CHECK(next.in >= 1s);
    CHECK(next.in <= 2s);
    CHECK_FALSE(next.leaveAlone);
}

TEST_CASE("where there is no mailbox to wait at it looks when the interval is over, and no sooner", "[sync][rhythm]")
{
    Rhythm rhythm(minute);
    for (int i = 0; i < 20; ++i) {
        REQUIRE(rhythm.afterRun(good(), 0.5).what == What::wait);
        const auto next = rhythm.afterWait({fail(Reason::notFound, "listening: there is no mailbox")}, 2ms, 0.5);
        CHECK(next.what == What::run);
        CHECK(next.in == minute - 2ms);
        CHECK_FALSE(next.leaveAlone);
    }
}
