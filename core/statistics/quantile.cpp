#include "core/statistics/quantile.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace ebbline::statistics {

Result<double> quantile(std::span<const double> values, double p, QuantileType type)
{
    if (!(p >= 0 && p <= 1))
        return fail(Reason::outOfRange, "p: want 0..1");
    if (values.empty())
        return fail(Reason::notEnough, "values: want at least one");
    if (!std::all_of(values.begin(), values.end(), [](double value) { return std::isfinite(value); }))
        return fail(Reason::notFinite, "values: want finite numbers");
    std::vector<double> sorted(values.begin(), values.end());
    std::sort(sorted.begin(), sorted.end());
    const double count = static_cast<double>(sorted.size());
    double position = 0;  // counted from 1
    switch (type) {
    case QuantileType::weibull: position = p * (count + 1); break;
    case QuantileType::linear: position = 1 + p * (count - 1); break;
    case QuantileType::unbiased: position = p * (count + 1.0 / 3) + 1.0 / 3; break;
    }
    position = std::clamp(position, 1.0, count);
    const auto below = static_cast<std::size_t>(position);
    if (below == sorted.size())
        return sorted.back();
    const double share = position - static_cast<double>(below);
    return (1 - share) * sorted[below - 1] + share * sorted[below];
}

}  // namespace ebbline::statistics
