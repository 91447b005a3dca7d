#include "core/clock/hybrid_clock.h"

#include <algorithm>

namespace ebbline::clock {

HybridTime HybridTime::of(Instant wall, std::uint16_t counter)
{
    const std::int64_t millis = std::max<std::int64_t>(0, wall.time_since_epoch().count());
    return HybridTime{(static_cast<std::uint64_t>(millis) << 16) | counter};
}

HybridTime HybridClock::tick(Instant wall)
{
    // A full counter carries into the milliseconds, which keeps the order.
    m_last = std::max(HybridTime::of(wall, 0), HybridTime{m_last.bits + 1});
    return m_last;
}

void HybridClock::observe(HybridTime peer, Instant wall)
{
    const HybridTime ceiling = HybridTime::of(wall + maximumPull, 0);
    m_last = std::max(m_last, std::min(peer, ceiling));
}

}  // namespace ebbline::clock
