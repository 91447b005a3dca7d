#pragma once
/// \file
/// A time zone as a calendar file describes it: stretches of time with one offset each.

#include "core/aftercare/care_plan.h"

namespace ebbline::aftercare {

struct ZoneSpan {
    clock::Instant from{};               ///< the clocks went to `offset` here
    std::chrono::minutes before{0};      ///< local minus UTC until then
    std::chrono::minutes offset{0};
    bool summer = false;
    std::string name;                    ///< "CEST"
    bool operator==(const ZoneSpan&) const = default;
};

/// The offsets in force between two instants, oldest first; the first began at or before `from`.
std::vector<ZoneSpan> spansOf(const Zone& zone, clock::Instant from, clock::Instant to);

}  // namespace ebbline::aftercare
