#include "core/statistics/rank_sum.h"

#include "core/statistics/median.h"
#include "core/statistics/ranks.h"

#include <cmath>
#include <vector>

namespace ebbline::statistics {

namespace {

/// Probabilities of the sum of `chosen` of the ranks, each choice alike.
std::vector<double> sumDistribution(const std::vector<long>& ranks, std::size_t chosen)
{
    long most = 0;
    for (const long rank : ranks)
        most += rank;
    const auto width = static_cast<std::size_t>(most) + 1;
    // By how many are chosen so far, then by their sum.
    std::vector<std::vector<double>> p(chosen + 1, std::vector<double>(width, 0));
    p[0][0] = 1;
    std::size_t seen = 0, reached = 0;
    for (const long each : ranks) {
        const auto rank = static_cast<std::size_t>(each);
        ++seen;
        reached += rank;
        for (std::size_t k = std::min(seen, chosen); k > 0; --k) {
            // Of `seen` ranks k are chosen, this one among them with the chance k / seen.
            const double taken = static_cast<double>(k) / static_cast<double>(seen);
            for (std::size_t sum = std::min(reached, width - 1) + 1; sum-- > 0;)
                p[k][sum] = (1 - taken) * p[k][sum] + (sum >= rank ? taken * p[k - 1][sum - rank] : 0);
        }
    }
    return p[chosen];
}

}  // namespace

Result<RankSum> rankSum(std::span<const double> first, std::span<const double> second, double confidence)
{
    if (!(confidence > 0 && confidence < 1))
        return fail(Reason::outOfRange, "confidence: want 0 < confidence < 1");
    if (first.empty() || second.empty())
        return fail(Reason::notEnough, "a group is empty");
    if (first.size() > maximumRankSumValues || second.size() > maximumRankSumValues)
        return fail(Reason::tooLarge, "values: want at most 100 in each group");
    std::vector<double> all(first.begin(), first.end());
    all.insert(all.end(), second.begin(), second.end());
    for (const double value : all)
        if (!std::isfinite(value))
            return fail(Reason::notFinite, "values: want finite numbers");
    if (std::ranges::all_of(all, [&](double value) { return value == all.front(); }))
        return fail(Reason::notEnough, "all values are equal");

    const std::size_t m = first.size(), n = second.size();
    const auto ranks = doubledRanks(all);
    std::size_t seen = 0;
    for (std::size_t i = 0; i < m; ++i)
        seen += static_cast<std::size_t>(ranks[i]);
    RankSum test{};
    const auto p = sumDistribution(ranks, m);
    for (std::size_t sum = 0; sum < p.size(); ++sum) {
        test.less += sum <= seen ? p[sum] : 0;
        test.greater += sum >= seen ? p[sum] : 0;
    }
    test.less = std::min(1.0, test.less);
    test.greater = std::min(1.0, test.greater);
    test.twoSided = std::min(1.0, 2 * std::min(test.less, test.greater));
    test.statistic = static_cast<double>(seen) / 2 - static_cast<double>(m * (m + 1)) / 2;

    std::vector<double> differences;
    for (const double a : first)
        for (const double b : second)
            differences.push_back(a - b);
    if (std::ranges::any_of(differences, [](double difference) { return !std::isfinite(difference); }))
        return fail(Reason::notFinite, "values: too far apart");
    std::ranges::sort(differences);
    test.shift = medianOf(differences);
    // Limits by order statistics, chosen from the distribution without ties.
    std::vector<long> plain(m + n);
    std::iota(plain.begin(), plain.end(), 1L);
    const auto free = sumDistribution(plain, m);
    std::size_t c = 0;
    double below = 0;
    const std::size_t least = m * (m + 1) / 2;
    while (least + c < free.size() && below + free[least + c] <= (1 - confidence) / 2)
        below += free[least + c++];
    if (c > 0)
        test.limits = Interval{differences[c - 1], differences[differences.size() - c]};
    return test;
}

}  // namespace ebbline::statistics
