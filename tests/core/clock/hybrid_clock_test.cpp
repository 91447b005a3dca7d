// Hybrid logical time: stamps of one device only ever grow, follow the wall clock where they
// can, and a peer with a wrong date cannot drag them along.
// Source of the scheme: Kulkarni et al., "Logical Physical Clocks", OPODIS 2014.

#include "core/clock/hybrid_clock.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <vector>

using namespace ebbline::clock;
using namespace std::chrono_literals;

namespace {

const Instant noon{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1} + 12h};

}  // namespace

TEST_CASE("a stamp carries the wall clock when nothing is ahead of it", "[clock]")
{
    HybridClock clock;

    const HybridTime stamp = clock.tick(noon);

    CHECK(stamp.wall() == noon);
    CHECK(stamp.counter() == 0);
}

TEST_CASE("two stamps in one millisecond differ and keep their order", "[clock]")
{
    HybridClock clock;

    const HybridTime first = clock.tick(noon);
    const HybridTime second = clock.tick(noon);

    CHECK(first < second);
    CHECK(second.wall() == noon);
}

TEST_CASE("turning the wall clock back does not turn the stamps back", "[clock]")
{
    HybridClock clock;

    const HybridTime before = clock.tick(noon);
    const HybridTime after = clock.tick(noon - 48h);

    CHECK(before < after);
}

TEST_CASE("an answer to a peer is stamped after what it answers", "[clock]")
{
    HybridClock clock;
    const HybridTime peer = HybridTime::of(noon + 2min, 7);

    clock.observe(peer, noon);

    CHECK(peer < clock.tick(noon));
}

TEST_CASE("a peer far in the future pulls us five minutes and no further", "[clock]")
{
    HybridClock clock;

    clock.observe(HybridTime::of(noon + 48h, 0), noon);

    CHECK(clock.tick(noon).wall() <= noon + HybridClock::maximumPull);
    CHECK(clock.tick(noon + 1h).wall() == noon + 1h);
}

TEST_CASE("stamps grow whatever the wall clock and the peers do", "[clock][property]")
{
    CHECK(ebbline::clock::HybridTime::of(Instant{-5ms}, 0).bits == 0);
    CHECK(rc::check("monotone", [](const std::vector<std::pair<std::int32_t, bool>>& events) {
        HybridClock clock;
        HybridTime last;
        for (const auto& [shift, fromPeer] : events) {
            const Instant wall = noon + std::chrono::milliseconds{shift};
            if (fromPeer) {
                clock.observe(HybridTime::of(wall, 3), noon);
                continue;
            }
            const HybridTime stamp = clock.tick(wall);
            RC_ASSERT(last < stamp);
            last = stamp;
        }
    }));
}
