#include "core/statistics/fisher.h"

#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <exception>
#include <limits>
#include <vector>

namespace ebbline::statistics {

namespace {

/// The tables with the margins of the one seen, by their `a`: lowest, lowest + 1, ...
struct Support {
    long lowest = 0;
    long seen = 0;
    std::vector<double> logWeight;  ///< of the hypergeometric distribution, without its constant

    bool seenIsLowest() const { return seen == lowest; }
    bool seenIsHighest() const { return seen - lowest == static_cast<long>(logWeight.size()) - 1; }

    /// Probabilities if the odds ratio is exp(logOdds).
    std::vector<double> probabilities(double logOdds) const
    {
        std::vector<double> p(logWeight.size());
        double largest = -std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i < p.size(); ++i) {
            p[i] = logWeight[i] + static_cast<double>(i) * logOdds;
            largest = std::max(largest, p[i]);
        }
        double sum = 0;
        for (double& each : p)
            sum += each = std::exp(each - largest);
        for (double& each : p)
            each /= sum;
        return p;
    }

    double upTo(double logOdds) const { return partOf(logOdds, 0, seen - lowest); }
    double from(double logOdds) const
    {
        return partOf(logOdds, seen - lowest, static_cast<long>(logWeight.size()) - 1);
    }
    double mean(double logOdds) const
    {
        double sum = 0;
        const auto p = probabilities(logOdds);
        for (std::size_t i = 0; i < p.size(); ++i)
            sum += static_cast<double>(i) * p[i];
        return sum;
    }

private:
    double partOf(double logOdds, long first, long last) const
    {
        const auto p = probabilities(logOdds);
        double sum = 0;
        for (long i = first; i <= last; ++i)
            sum += p[static_cast<std::size_t>(i)];
        return std::min(1.0, sum);
    }
};

Support supportOf(const TwoByTwo& t)
{
    const long row = t.a + t.b;
    const long column = t.a + t.c;
    const long total = t.a + t.b + t.c + t.d;
    Support support{std::max(0L, row + column - total), t.a, {}};
    const long highest = std::min(row, column);
    support.logWeight.reserve(static_cast<std::size_t>(highest - support.lowest) + 1);
    double logWeight = 0;
    for (long a = support.lowest; a <= highest; ++a) {
        support.logWeight.push_back(logWeight);
        logWeight += std::log(static_cast<double>(row - a)) + std::log(static_cast<double>(column - a))
                     - std::log(static_cast<double>(a + 1)) - std::log(static_cast<double>(total - row - column + a + 1));
    }
    return support;
}

/// Where an increasing function of the logarithm of the odds passes zero.
template <typename Increasing>
double root(Increasing f)
{
    double reach = 1;
    while (reach < 1e3 && (f(-reach) > 0 || f(reach) < 0))
        reach *= 2;
    std::uintmax_t rounds = 200;
    const auto [low, high] =
        boost::math::tools::toms748_solve(f, -reach, reach, boost::math::tools::eps_tolerance<double>(48), rounds);
    return (low + high) / 2;
}

}  // namespace

Result<FisherTest> fisherExact(const TwoByTwo& t, double confidence)
{
    for (const long count : {t.a, t.b, t.c, t.d})
        if (count < 0 || count > maximumFisherTotal)
            return fail(Reason::outOfRange, "counts: want 0..1000000");
    if (t.a + t.b + t.c + t.d > maximumFisherTotal)
        return fail(Reason::outOfRange, "counts: want a sum of at most 1000000");
    if (!(confidence > 0 && confidence < 1))
        return fail(Reason::outOfRange, "confidence: want 0 < confidence < 1");
    if (t.a + t.b == 0 || t.c + t.d == 0 || t.a + t.c == 0 || t.b + t.d == 0)
        return fail(Reason::notEnough, "counts: a row or a column is empty, so no other table is possible");

    const Support support = supportOf(t);
    const auto p = support.probabilities(0);
    const double own = p[static_cast<std::size_t>(t.a - support.lowest)];
    FisherTest test{0, support.upTo(0), support.from(0), std::nullopt, 0, std::nullopt};
    // Equally likely tables differ by rounding only.
    constexpr double equal = 1 + 1e-7;
    for (const double each : p)
        if (each <= own * equal)
            test.twoSided += each;
    test.twoSided = std::min(1.0, test.twoSided);

    const double tail = (1 - confidence) / 2;
    const auto place = static_cast<double>(t.a - support.lowest);
    try {
        if (support.seenIsLowest())
            test.oddsRatio = 0;
        else
            test.oddsRatioLow = std::exp(root([&](double o) { return support.from(o) - tail; }));
        if (!support.seenIsHighest()) {
            test.oddsRatioHigh = std::exp(root([&](double o) { return tail - support.upTo(o); }));
            if (!support.seenIsLowest())
                test.oddsRatio = std::exp(root([&](double o) { return support.mean(o) - place; }));
        }
    } catch (const std::exception&) {
        return fail(Reason::outOfRange, "counts: the odds ratio has no finite limits");
    }
    return test;
}

}  // namespace ebbline::statistics
