#pragma once
/// \file
/// Hybrid logical time: orders operations of several devices whose wall clocks disagree.
///
/// Source: Kulkarni, Demirbas, Madappa, Avva, Leone, "Logical Physical Clocks", OPODIS 2014.
/// Our clock rule (docs/decisions): a stamp from a peer is always accepted, however wrong its
/// clock; but it never pulls our own time more than five minutes past our own wall clock, so one
/// phone with a wrong date cannot drag everybody into the future.

#include "core/clock/instant.h"

#include <compare>
#include <cstdint>

namespace ebbline::clock {

/// Upper 48 bits: milliseconds since 1970 (UTC). Lower 16 bits: counter within one millisecond.
struct HybridTime {
    std::uint64_t bits = 0;

    auto operator<=>(const HybridTime&) const = default;

    Instant wall() const { return Instant{std::chrono::milliseconds{static_cast<std::int64_t>(bits >> 16)}}; }
    std::uint16_t counter() const { return static_cast<std::uint16_t>(bits & 0xffff); }

    /// Instants before 1970 count as 1970.
    static HybridTime of(Instant wall, std::uint16_t counter);
};

/// One device's logical clock. Stored with the journal, never reset.
class HybridClock {
public:
    /// How far a peer's stamp may pull us past our own wall clock.
    static constexpr std::chrono::minutes maximumPull{5};

    explicit HybridClock(HybridTime last = {}) : m_last(last) {}

    /// The stamp for a new operation: after every stamp given or observed before.
    HybridTime tick(Instant wall);

    /// Takes note of a peer's stamp.
    void observe(HybridTime peer, Instant wall);

    HybridTime last() const { return m_last; }

private:
    HybridTime m_last;
};

}  // namespace ebbline::clock
