#include "core/statistics/pooling.h"

#include "core/statistics/rising.h"

#include <boost/math/special_functions/digamma.hpp>
#include <boost/math/special_functions/trigamma.hpp>

#include <algorithm>
#include <cmath>

namespace ebbline::statistics {

namespace {

constexpr double largestWeight = 1e6;

using boost::math::digamma;
using boost::math::trigamma;

bool possible(std::span<const Counts> groups)
{
    for (const Counts& group : groups)
        if (group.total <= 0 || group.events < 0 || group.events > group.total)
            return false;
    return true;
}

double logLikelihood(const Beta& between, std::span<const Counts> groups)
{
    double sum = 0;
    for (const Counts& group : groups)
        sum += logRising(between.a, group.events) + logRising(between.b, group.total - group.events)
               - logRising(between.a + between.b, group.total);
    return sum;
}

/// First and second derivatives of the log-likelihood by the logarithms of a and b.
struct Slope {
    double a = 0, b = 0, aa = 0, ab = 0, bb = 0;
};

Slope slopeAt(const Beta& between, std::span<const Counts> groups)
{
    const auto [a, b] = between;
    Slope s;
    for (const Counts& group : groups) {
        const auto yes = static_cast<double>(group.events);
        const auto all = static_cast<double>(group.total);
        const double both = digamma(a + b) - digamma(a + b + all);
        const double bothBend = trigamma(a + b) - trigamma(a + b + all);
        s.a += digamma(a + yes) - digamma(a) + both;
        s.b += digamma(b + all - yes) - digamma(b) + both;
        s.aa += trigamma(a + yes) - trigamma(a) + bothBend;
        s.bb += trigamma(b + all - yes) - trigamma(b) + bothBend;
        s.ab += bothBend;
    }
    return {a * s.a, b * s.b, a * a * s.aa + a * s.a, a * b * s.ab, b * b * s.bb + b * s.b};
}

}  // namespace

Beta updated(const Beta& prior, const Counts& group) noexcept
{
    return {prior.a + static_cast<double>(group.events), prior.b + static_cast<double>(group.total - group.events)};
}

Result<double> betaBinomialLogLikelihood(const Beta& between, std::span<const Counts> groups)
{
    if (!possible(groups))
        return fail(Reason::outOfRange, "groups: want 0 <= events <= total and total > 0");
    if (!(between.a > 0 && between.b > 0) || !std::isfinite(between.a + between.b))
        return fail(Reason::outOfRange, "distribution: want a > 0 and b > 0");
    return logLikelihood(between, groups);
}

Result<Beta> betaFromMoments(std::span<const Counts> groups)
{
    if (!possible(groups))
        return fail(Reason::outOfRange, "groups: want 0 <= events <= total and total > 0");
    if (groups.size() < 2)
        return fail(Reason::notEnough, "groups: want at least 2");
    const auto n = static_cast<double>(groups.size());
    double sum = 0, squares = 0;
    for (const Counts& group : groups)
        sum += static_cast<double>(group.events) / static_cast<double>(group.total);
    const double mean = sum / n;
    for (const Counts& group : groups) {
        const double off = static_cast<double>(group.events) / static_cast<double>(group.total) - mean;
        squares += off * off;
    }
    const double variance = squares / (n - 1);
    const double weight = mean * (1 - mean) / variance - 1;
    // Equal shares differ by rounding only.
    if (!(variance > 1e-20) || !(weight > 0))
        return fail(Reason::notEnough, "groups: the shares do not spread as a beta distribution does");
    return Beta{mean * weight, (1 - mean) * weight};
}

Result<std::optional<Beta>> spreadBetween(std::span<const Counts> groups)
{
    if (!possible(groups))
        return fail(Reason::outOfRange, "groups: want 0 <= events <= total and total > 0");
    if (groups.size() < 2)
        return fail(Reason::notEnough, "groups: want at least 2");
    long events = 0, total = 0;
    for (const Counts& group : groups) {
        events += group.events;
        total += group.total;
    }
    if (events == 0 || events == total)
        return std::optional<Beta>();
    const double mean = static_cast<double>(events) / static_cast<double>(total);

    Beta now = betaFromMoments(groups).value_or(Beta{10 * mean, 10 * (1 - mean)});
    double value = logLikelihood(now, groups);
    for (int round = 0; round < 500; ++round) {
        const Slope s = slopeAt(now, groups);
        // Newton's step where the likelihood bends downwards, else uphill.
        double stepA = s.a, stepB = s.b;
        if (const double determinant = s.aa * s.bb - s.ab * s.ab; s.aa < 0 && determinant > 0) {
            stepA = -(s.bb * s.a - s.ab * s.b) / determinant;
            stepB = -(s.aa * s.b - s.ab * s.a) / determinant;
        }
        const double length = std::hypot(stepA, stepB);
        if (length < 1e-12)
            break;
        double share = std::min(1.0, 1.0 / length);
        bool moved = false;
        for (; share * length > 1e-13; share /= 2) {
            const Beta next{now.a * std::exp(share * stepA), now.b * std::exp(share * stepB)};
            const double nextValue = logLikelihood(next, groups);
            if (nextValue >= value) {
                moved = nextValue > value;
                now = next;
                value = nextValue;
                break;
            }
        }
        if (now.a + now.b > largestWeight)
            return std::optional<Beta>();
        if (now.a + now.b < 1e-6)
            return fail(Reason::notEnough, "groups: each is all events or none");
        if (!moved)
            break;
    }
    const Slope s = slopeAt(now, groups);
    // Flat to the rounding of the sum, or else this is no maximum.
    if (std::hypot(s.a, s.b) > 1e-5 * std::max(1.0, std::abs(value)) || s.aa >= 0)
        return fail(Reason::notEnough, "groups: the likelihood has no maximum");
    return std::optional(now);
}

Result<Beta> fitBetaBinomial(std::span<const Counts> groups)
{
    const Result<std::optional<Beta>> between = spreadBetween(groups);
    if (!between)
        return fail(between.error());
    if (!*between)
        return fail(Reason::notEnough, "groups: they differ no more than chance makes them");
    return **between;
}

double probabilityOfRun(const Beta& belief, int run) noexcept
{
    double probability = 1;
    for (int i = 0; i < run; ++i)
        probability *= (belief.a + i) / (belief.a + belief.b + i);
    return probability;
}

}  // namespace ebbline::statistics
