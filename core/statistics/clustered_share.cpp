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
    if (!allAlike) {
        const Result<double> z = normalQuantile(0.5 + confidence / 2);
        const Result<double> t = studentQuantile(0.5 + confidence / 2, count - 1);
        if (!z || !t)
            return fail(Reason::outOfRange, "confidence: too near to 0 or 1");
        const double loss = *z / *t;
        effective = (variance > 0 ? std::min(readings, p * (1 - p) / variance) : readings) * loss * loss;
    }
    const double yes = p * effective;
    const double no = effective - yes;
    const double tail = (1 - confidence) / 2;
    const Result<double> low = yes > 0 ? betaQuantile(tail, yes, no + 1) : 0.0;
    const Result<double> high = no > 0 ? betaQuantile(1 - tail, yes + 1, no) : 1.0;
    if (!low || !high)
        return fail(Reason::outOfRange, "groups: too large for an interval");
    return ClusteredShare{p, {std::min(*low, p), std::max(*high, p)}, effective};
}

}  // namespace ebbline::statistics
