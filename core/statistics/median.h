#pragma once
/// \file
/// inside of core/statistics only

#include <algorithm>
#include <vector>

namespace ebbline::statistics {

/// The middle, or the mean of the two middle values. \pre not empty
inline double medianOf(std::vector<double> values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1)
        return *middle;
    return *std::max_element(values.begin(), middle) / 2 + *middle / 2;
}

}  // namespace ebbline::statistics
