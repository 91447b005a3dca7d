#include "core/statistics/clustered_share.h"

#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>

namespace ebbline::statistics {

Result<ClusteredShare> clusteredShare(std::span<const Group> groups, double confidence)
{
    if (groups.size() < 2)
        return fail(Reason::notEnough, "groups: want at least two");
    if (!(confidence > 0 && confidence < 1))
        return fail(Reason::outOfRange, "confidence: want between 0 and 1");
    double events = 0;
    double readings = 0;
    for (const Group& group : groups) {
        if (group.readings <= 0 || group.events < 0 || group.events > group.readings)
            return fail(Reason::outOfRange, "group: want 0 <= events <= readings, readings above 0");
        events += static_cast<double>(group.events);
        readings += static_cast<double>(group.readings);
    }
    const double p = events / readings;
    double squares = 0;
    for (const Group& group : groups) {
        const double surplus = static_cast<double>(group.events) - p * static_cast<double>(group.readings);
        squares += surplus * surplus;
    }
    const double count = static_cast<double>(groups.size());
    const double variance = count / (count - 1) * squares / (readings * readings);
    const bool allAlike = events == 0 || events == readings;
    double effective = count;
    if (!allAlike)
        effective = variance > 0 ? std::min(readings, p * (1 - p) / variance) : readings;

    const Result<double> z = normalQuantile(0.5 + confidence / 2);
    if (!z)
        return fail(z.error());
    const double square = *z * *z;
    const double centre = (p + square / (2 * effective)) / (1 + square / effective);
    const double reach = *z / (1 + square / effective)
                         * std::sqrt(p * (1 - p) / effective + square / (4 * effective * effective));
    return ClusteredShare{p, {std::clamp(centre - reach, 0.0, p), std::clamp(centre + reach, p, 1.0)}, effective};
}

}  // namespace ebbline::statistics
