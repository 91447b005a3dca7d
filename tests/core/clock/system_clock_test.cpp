// The machine's clocks: one that says what day it is, one that nobody can set.

#include "core/clock/instant.h"

#include <catch2/catch_test_macros.hpp>

#include <thread>

using namespace ebbline::clock;
using namespace std::chrono_literals;

TEST_CASE("the time since boot grows with real time and names its boot the same way each time", "[clock]")
{
    const SystemClock clock;
    const Uptime first = clock.uptime();
    std::this_thread::sleep_for(20ms);
    const Uptime second = clock.uptime();

    CHECK(second.elapsed - first.elapsed >= 19ms);
    CHECK(second.elapsed - first.elapsed < 10s);
    CHECK(second.run == first.run);
    CHECK(first.run != std::array<std::uint8_t, 16>{});
    if (first.wholeBoot)
        CHECK(SystemClock().uptime().run == first.run);
}

TEST_CASE("a manual clock tells time that passes from a wall clock that is set", "[clock]")
{
    ManualClock clock{Instant{1000s}};

    clock.advance(5s);
    CHECK(clock.readings().uptime.elapsed == 5s);
    clock.turnWall(Instant{9000s});
    CHECK(clock.readings().uptime.elapsed == 5s);
    CHECK(clock.readings().wall == Instant{9000s});
    clock.set(Instant{8000s});
    CHECK(clock.uptime().elapsed == 5s);

    const Uptime before = clock.uptime();
    clock.restart();
    CHECK(clock.uptime().elapsed == 0s);
    CHECK(clock.uptime().run != before.run);
}
