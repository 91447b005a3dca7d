#pragma once
/// \file
/// inside of core/statistics only

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <span>
#include <vector>

namespace ebbline::statistics {

/// Twice the mean rank of each value, so that ranks of ties are whole.
inline std::vector<long> doubledRanks(std::span<const double> values)
{
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), 0U);
    std::ranges::sort(order, {}, [&](std::size_t i) { return values[i]; });
    std::vector<long> ranks(values.size());
    for (std::size_t first = 0; first < order.size();) {
        std::size_t last = first;
        while (last < order.size() && values[order[last]] == values[order[first]])
            ++last;
        for (std::size_t i = first; i < last; ++i)
            ranks[order[i]] = static_cast<long>(first + last + 1);
        first = last;
    }
    return ranks;
}

}  // namespace ebbline::statistics
