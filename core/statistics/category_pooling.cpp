// The part of pooling.h about counts by category.

#include "core/statistics/pooling.h"
#include "core/statistics/rising.h"

#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>

namespace ebbline::statistics {

namespace {

constexpr double lightest = 0.01;
constexpr double heaviest = 1e6;

Done checked(std::span<const double> seed, double weight, std::span<const CategoryCounts> groups)
{
    if (seed.size() < 2)
        return fail(Reason::outOfRange, "seed: want at least 2 categories");
    for (const double share : seed)
        if (!(share > 0 && share < 1))
            return fail(Reason::outOfRange, "seed: want 0 < share < 1");
    if (std::abs(std::accumulate(seed.begin(), seed.end(), 0.0) - 1) > 1e-9)
        return fail(Reason::outOfRange, "seed: want a sum of 1");
    if (!(weight > 0) || !std::isfinite(weight))
        return fail(Reason::outOfRange, "weight: want > 0");
    for (const CategoryCounts& group : groups)
        if (group.size() != seed.size() || std::ranges::any_of(group, [](long count) { return count < 0; }))
            return fail(Reason::outOfRange, "counts: want one >= 0 for each category of the seed");
    return {};
}

double logLikelihood(std::span<const double> seed, double weight, std::span<const CategoryCounts> groups)
{
    double sum = 0;
    for (const CategoryCounts& group : groups) {
        for (std::size_t i = 0; i < seed.size(); ++i)
            sum += logRising(weight * seed[i], group[i]);
        sum -= logRising(weight, std::accumulate(group.begin(), group.end(), 0L));
    }
    return sum;
}

}  // namespace

Result<std::vector<double>> pooledShares(std::span<const double> seed, double weight, const CategoryCounts& counts)
{
    if (const Done fine = checked(seed, weight, {&counts, 1}); !fine)
        return fail(fine.error());
    const auto own = static_cast<double>(std::accumulate(counts.begin(), counts.end(), 0L));
    std::vector<double> shares;
    shares.reserve(seed.size());
    for (std::size_t i = 0; i < seed.size(); ++i)
        shares.push_back((weight * seed[i] + static_cast<double>(counts[i])) / (weight + own));
    return shares;
}

Result<double> dirichletMultinomialLogLikelihood(std::span<const double> seed, double weight,
                                                 std::span<const CategoryCounts> groups)
{
    if (const Done fine = checked(seed, weight, groups); !fine)
        return fail(fine.error());
    return logLikelihood(seed, weight, groups);
}

Result<double> fitSeedWeight(std::span<const double> seed, std::span<const CategoryCounts> groups)
{
    if (const Done fine = checked(seed, 1, groups); !fine)
        return fail(fine.error());
    if (groups.size() < 2)
        return fail(Reason::notEnough, "groups: want at least 2");
    const auto cost = [&](double logWeight) { return -logLikelihood(seed, std::exp(logWeight), groups); };
    // The likelihood may have a shoulder: look at the whole range first.
    const double from = std::log(lightest), step = (std::log(heaviest) - from) / 60;
    int best = 0;
    double least = cost(from);
    for (int i = 1; i <= 60; ++i)
        if (const double here = cost(from + i * step); here < least) {
            least = here;
            best = i;
        }
    if (best == 0 || best == 60)
        return fail(Reason::notEnough, "groups: they do not say how much the seed weighs");
    std::uintmax_t rounds = 200;
    const auto found =
        boost::math::tools::brent_find_minima(cost, from + (best - 1) * step, from + (best + 1) * step, 50, rounds);
    return std::exp(found.first);
}

}  // namespace ebbline::statistics
