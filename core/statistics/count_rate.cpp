#include "core/statistics/count_rate.h"

#include "core/statistics/distributions.h"

#include <algorithm>

namespace ebbline::statistics {

Result<CountRate> countRate(std::span<const long> counts, double confidence)
{
    if (counts.empty())
        return fail(Reason::notEnough, "counts: want at least one subject");
    if (!(confidence > 0 && confidence < 1))
        return fail(Reason::outOfRange, "confidence: want more than 0 and less than 1");
    const double subjects = static_cast<double>(counts.size());
    double total = 0;
    for (const long count : counts) {
        if (count < 0)
            return fail(Reason::outOfRange, "counts: want 0 or more");
        total += static_cast<double>(count);
    }
    const double mean = total / subjects;
    double squares = 0;
    for (const long count : counts)
        squares += (static_cast<double>(count) - mean) * (static_cast<double>(count) - mean);
    const double scatter = total > 0 && counts.size() > 1 ? std::max(1.0, squares / (subjects - 1) / mean) : 1.0;
    const double events = total / scatter;
    const double tail = (1 - confidence) / 2;
    const Result<double> low = events > 0 ? chiSquareQuantile(tail, 2 * events) : Result<double>(0.0);
    const Result<double> high = chiSquareQuantile(1 - tail, 2 * events + 2);
    if (!low || !high)
        return fail(low ? high.error() : low.error());
    const double scale = scatter / subjects / 2;
    return CountRate{mean, {*low * scale, *high * scale}, scatter};
}

}  // namespace ebbline::statistics
