#include "core/statistics/signed_rank.h"

#include "core/statistics/median.h"
#include "core/statistics/ranks.h"

#include <cmath>
#include <numeric>
#include <vector>

namespace ebbline::statistics {

namespace {

/// Probabilities of the sums of ranks if each has an even chance to count.
std::vector<double> sumDistribution(const std::vector<long>& ranks)
{
    const long most = std::accumulate(ranks.begin(), ranks.end(), 0L);
    std::vector<double> p(static_cast<std::size_t>(most) + 1, 0);
    p[0] = 1;
    long reached = 0;
    for (const long rank : ranks) {
        reached += rank;
        for (long sum = reached; sum >= 0; --sum) {
            double& here = p[static_cast<std::size_t>(sum)];
            here = here / 2 + (sum >= rank ? p[static_cast<std::size_t>(sum - rank)] / 2 : 0);
        }
    }
    return p;
}

/// Limits by the order statistics of the pairs' means, chosen from the distribution without ties.
std::optional<Interval> limitsOf(const std::vector<double>& sortedMeans, std::size_t n, double confidence)
{
    std::vector<long> ranks(n);
    std::iota(ranks.begin(), ranks.end(), 1L);
    const auto p = sumDistribution(ranks);
    // The largest c with P(sum < c) within half the error; the c-th smallest mean is the lower limit.
    std::size_t c = 0;
    double below = 0;
    while (c < p.size() && below + p[c] <= (1 - confidence) / 2)
        below += p[c++];
    if (c == 0)
        return std::nullopt;
    return Interval{sortedMeans[c - 1], sortedMeans[sortedMeans.size() - c]};
}

}  // namespace

Result<SignedRank> signedRank(std::span<const double> differences, double confidence, ZeroDifferences zeros)
{
    if (!(confidence > 0 && confidence < 1))
        return fail(Reason::outOfRange, "confidence: want 0 < confidence < 1");
    if (differences.size() > maximumSignedRankPairs)
        return fail(Reason::tooLarge, "differences: want at most 400");
    SignedRank test{};
    std::vector<double> sizes;
    std::vector<bool> above, counts;
    for (const double difference : differences) {
        if (!std::isfinite(difference))
            return fail(Reason::notFinite, "differences: want finite numbers");
        test.zeros += difference == 0;
        if (difference == 0 && zeros == ZeroDifferences::leftOut)
            continue;
        sizes.push_back(std::abs(difference));
        above.push_back(difference > 0);
        counts.push_back(difference != 0);
    }
    if (static_cast<std::size_t>(test.zeros) == differences.size())
        return fail(Reason::notEnough, "no difference is other than 0");

    const auto all = doubledRanks(sizes);
    std::vector<long> ranks;
    long seen = 0;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (counts[i]) {
            ranks.push_back(all[i]);
            seen += above[i] ? all[i] : 0;
        }
    const auto p = sumDistribution(ranks);
    for (std::size_t sum = 0; sum < p.size(); ++sum) {
        test.less += sum <= static_cast<std::size_t>(seen) ? p[sum] : 0;
        test.greater += sum >= static_cast<std::size_t>(seen) ? p[sum] : 0;
    }
    test.less = std::min(1.0, test.less);
    test.greater = std::min(1.0, test.greater);
    test.twoSided = std::min(1.0, 2 * std::min(test.less, test.greater));
    test.statistic = static_cast<double>(seen) / 2;

    std::vector<double> means;
    for (std::size_t i = 0; i < differences.size(); ++i)
        for (std::size_t j = i; j < differences.size(); ++j)
            means.push_back(differences[i] / 2 + differences[j] / 2);
    std::ranges::sort(means);
    test.shift = medianOf(means);
    test.limits = limitsOf(means, differences.size(), confidence);
    return test;
}

}  // namespace ebbline::statistics
