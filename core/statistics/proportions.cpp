#include "core/statistics/proportions.h"

#include "core/statistics/distributions.h"

#include <cmath>

namespace ebbline::statistics {

namespace {

Done checked(long events, long total, double confidence)
{
    if (total <= 0 || events < 0 || events > total)
        return fail(Reason::outOfRange, "want 0 <= events <= total and total > 0");
    if (!(confidence > 0 && confidence < 1))
        return fail(Reason::outOfRange, "confidence: want 0 < confidence < 1");
    return {};
}

/// From a quantile of Beta(lowA, lowB) to one of Beta(highA, highB), each with half the error outside.
Result<Interval> betaInterval(long events, long total, double confidence, double shiftA, double shiftB)
{
    if (const Done fine = checked(events, total, confidence); !fine)
        return fail(fine.error());
    const auto yes = static_cast<double>(events);
    const auto no = static_cast<double>(total - events);
    Interval interval{0, 1};
    if (events > 0) {
        const Result<double> low = betaQuantile((1 - confidence) / 2, yes + shiftA, no + shiftB);
        if (!low)
            return fail(low.error());
        interval.low = *low;
    }
    if (events < total) {
        const Result<double> high = betaQuantile((1 + confidence) / 2, yes + shiftB, no + shiftA);
        if (!high)
            return fail(high.error());
        interval.high = *high;
    }
    return interval;
}

}  // namespace

Result<Interval> wilson(long events, long total, double confidence)
{
    if (const Done fine = checked(events, total, confidence); !fine)
        return fail(fine.error());
    const Result<double> z = normalQuantile(0.5 + confidence / 2);
    if (!z)
        return fail(z.error());
    const auto n = static_cast<double>(total);
    const double p = static_cast<double>(events) / n;
    const double square = *z * *z;
    const double middle = p + square / (2 * n);
    const double half = *z * std::sqrt(p * (1 - p) / n + square / (4 * n * n));
    const double scale = 1 + square / n;
    return Interval{events == 0 ? 0.0 : (middle - half) / scale, events == total ? 1.0 : (middle + half) / scale};
}

Result<Interval> jeffreys(long events, long total, double confidence)
{
    return betaInterval(events, total, confidence, 0.5, 0.5);
}

Result<Interval> clopperPearson(long events, long total, double confidence)
{
    return betaInterval(events, total, confidence, 0, 1);
}

}  // namespace ebbline::statistics
