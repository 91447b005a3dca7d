// How long nobody used a program: warned before, over at the limit, whatever sleep and set clocks do.

#include "core/clock/idle_time.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline::clock;
using namespace std::chrono_literals;
using State = IdleTime::State;

namespace {

const Instant noon{std::chrono::sys_days{std::chrono::year{2026} / 3 / 2} + 12h};

/// The wall clock goes on, and nothing counts the time: a machine that sleeps.
class SleepingClock final : public Clock {
public:
    Instant now() const override { return wall; }
    Uptime uptime() const override { return up; }
    Instant wall = noon;
    Uptime up;
};

}  // namespace

TEST_CASE("thirty seconds before the limit it is said, and at the limit it is over", "[idle]")
{
    const auto limit = GENERATE(2min, 5min, 15min, 30min);
    ManualClock clock(noon);
    IdleTime idle(clock, limit);
    CHECK(idle.state() == State::inUse);
    CHECK(idle.untilChange() == limit - 30s);

    clock.advance(limit - 30s - 1ms);
    CHECK(idle.state() == State::inUse);
    CHECK(idle.untilChange() == 1ms);
    clock.advance(1ms);
    CHECK(idle.state() == State::ending);
    CHECK(idle.untilChange() == 30s);
    clock.advance(30s - 1ms);
    CHECK(idle.state() == State::ending);
    clock.advance(1ms);
    CHECK(idle.state() == State::over);
    CHECK(idle.untilChange() == 0ms);
}

TEST_CASE("a touch counts from anew, as often as one likes, also while it is being said", "[idle]")
{
    ManualClock clock(noon);
    IdleTime idle(clock, 5min);
    for (int i = 0; i < 20; ++i) {
        clock.advance(5min - 1s);
        REQUIRE(idle.state() == State::ending);
        idle.used();
        REQUIRE(idle.state() == State::inUse);
        REQUIRE(idle.untilChange() == 4min + 30s);
    }
}

TEST_CASE("a touch that comes too late brings nothing back", "[idle]")
{
    ManualClock clock(noon);
    IdleTime idle(clock, 2min);
    clock.advance(2min);
    idle.used();
    CHECK(idle.state() == State::over);
    idle.begin();
    CHECK(idle.state() == State::inUse);
}

TEST_CASE("time asleep counts, though nothing but the wall clock saw it", "[idle]")
{
    SleepingClock clock;
    IdleTime idle(clock, 5min);
    clock.wall += 5min;
    CHECK(idle.state() == State::over);
}

TEST_CASE("turning the wall clock back gives no time, and turning it forward takes only some", "[idle]")
{
    ManualClock clock(noon);
    IdleTime idle(clock, 5min);
    clock.advance(4min);
    clock.turnWall(noon - 1h);
    CHECK(idle.state() == State::inUse);
    CHECK(idle.untilChange() == 30s);
    clock.advance(1min);
    CHECK(idle.state() == State::over);

    idle.begin();
    clock.turnWall(clock.now() + 1h);
    CHECK(idle.state() == State::over);
}

TEST_CASE("a touch from another run of the machine is long ago", "[idle]")
{
    ManualClock clock(noon);
    IdleTime idle(clock, 5min);
    clock.restart();
    CHECK(idle.state() == State::over);
}

TEST_CASE("a shorter limit counts at once, and a longer one does too", "[idle]")
{
    ManualClock clock(noon);
    IdleTime idle(clock, 15min);
    clock.advance(3min);
    idle.setLimit(2min);
    CHECK(idle.state() == State::over);
    idle.setLimit(5min);
    CHECK(idle.state() == State::inUse);
}
