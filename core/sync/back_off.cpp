#include "core/sync/link_sync.h"

#include <algorithm>
#include <cmath>

namespace ebbline::sync {

std::chrono::milliseconds backOff(int failures, double random)
{
    constexpr double first = 2'000;
    constexpr double longest = 15 * 60 * 1'000;
    const double ceiling = std::min(longest, first * std::pow(2.0, std::clamp(failures - 1, 0, 30)));
    return std::chrono::milliseconds{static_cast<std::int64_t>(ceiling * std::clamp(random, 0.0, 1.0))};
}

}  // namespace ebbline::sync
