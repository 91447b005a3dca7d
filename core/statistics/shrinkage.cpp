#include "core/statistics/shrinkage.h"

#include <algorithm>
#include <cmath>

namespace ebbline::statistics {

Result<Shrinkage> shrunkMeans(std::span<const double> values, double variance)
{
    if (!(variance > 0) || !std::isfinite(variance))
        return fail(Reason::outOfRange, "variance: want above 0");
    if (values.size() < 4)
        return fail(Reason::notEnough, "values: want at least four");
    const double count = static_cast<double>(values.size());
    Shrinkage result{0, 0, {}};
    for (const double value : values)
        result.mean += value / count;
    double squares = 0;
    for (const double value : values)
        squares += (value - result.mean) * (value - result.mean);
    if (!std::isfinite(squares))
        return fail(Reason::notFinite, "values: want finite numbers that lie not too far apart");
    result.factor = squares > 0 ? std::max(0.0, 1 - (count - 3) * variance / squares) : 0;
    for (const double value : values)
        result.shrunk.push_back(result.mean + result.factor * (value - result.mean));
    return result;
}

}  // namespace ebbline::statistics
