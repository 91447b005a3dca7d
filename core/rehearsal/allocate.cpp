#include "core/rehearsal/allocate.h"

#include "core/rehearsal/assumed_trouble.h"

#include <algorithm>

namespace ebbline::rehearsal {

namespace {

using triggers::Statistic;

constexpr int bisections = 16;
constexpr double alone = 25;         // times its usual share: as good as the whole budget
constexpr double meanWeight = 0.25;  // of the mean loss beside the largest
constexpr double leastGain = 1e-4;
constexpr double widest = 20;        // times the usual share, or one part of so many
constexpr int mostRounds = 12;

/// In the order of troubledKinds.
constexpr std::array answering{Statistic::oneSideWorsens, Statistic::oneSideFills, Statistic::slowOverall};
/// What is called about counts double: a loss there costs more than one of a slow course.
constexpr std::array gravity{2.0, 2.0, 1.0};
using Rates = std::array<double, answering.size()>;

double& shareOf(Shares& shares, Statistic statistic)
{
    return shares[static_cast<std::size_t>(statistic)];
}

/// What is found of each kind when the courses of the cohort alert as often as the budget allows.
Rates ratesUnder(const Cohort& cohort, const TroubledPeaks& troubled, double budget, const Shares& shares)
{
    double low = 0;
    double high = mostAlpha;
    for (int i = 0; i < bisections; ++i) {
        const double middle = (low + high) / 2;
        (cohort.alertRate(cohort.limits(middle, shares)) <= budget ? low : high) = middle;
    }
    const Limits limits = cohort.limits(low, shares);
    Rates rates{};
    for (std::size_t kind = 0; kind < rates.size(); ++kind) {
        const auto found = std::count_if(troubled[kind].begin(), troubled[kind].end(),
                                         [&](const Peaks& peaks) { return alerts(peaks, limits); });
        rates[kind] = static_cast<double>(found) / static_cast<double>(std::max<std::size_t>(1, troubled[kind].size()));
    }
    return rates;
}

}  // namespace

TroubledPeaks troubledPeaks(const std::vector<const KnownCourse*>& plain, const triggers::Protocol& protocol,
                            std::uint64_t seed, std::size_t most)
{
    const std::size_t stride = (plain.size() + most - 1) / most;
    TroubledPeaks troubled(troubledKinds.size());
    for (std::size_t kind = 0; kind < troubledKinds.size(); ++kind)
        for (std::size_t i = 0; i < plain.size(); i += stride) {
            Chance chance(seed, ((std::uint64_t{kind} + 1) << 32) + i);
            const KnownCourse course = rehearsal::troubled(*plain[i], troubledKinds[kind], chance);
            clock::Moment until = endOf(course.input);
            if (troubledKinds[kind] != Kind::slowRecovery) {
                until = *course.truth.onset;
                until.at += troubledKinds[kind] == Kind::infection ? std::chrono::hours(72) : std::chrono::hours(24);
            }
            troubled[kind].push_back(peaksBetween(course.input, protocol, *course.truth.onset, until));
        }
    return troubled;
}

Shares allocated(const Cohort& cohort, const TroubledPeaks& troubled, double budget, const Shares& start)
{
    Rates best{};
    for (std::size_t kind = 0; kind < best.size(); ++kind) {
        Shares own = start;
        shareOf(own, answering[kind]) *= alone;
        best[kind] = ratesUnder(cohort, troubled, budget, own)[kind];
    }
    const auto loss = [&](const Shares& shares) {
        const Rates rates = ratesUnder(cohort, troubled, budget, shares);
        double largest = 0;
        double sum = 0;
        for (std::size_t kind = 0; kind < rates.size(); ++kind) {
            const double lost = gravity[kind] * (best[kind] - rates[kind]);
            largest = std::max(largest, lost);
            sum += lost;
        }
        return largest + meanWeight * sum / static_cast<double>(rates.size());
    };
    Shares shares = start;
    double least = loss(shares);
    for (const double factor : {4.0, 2.0, 1.4, 1.15}) {
        bool better = true;
        for (int round = 0; better && round < mostRounds; ++round) {
            better = false;
            for (const Statistic statistic : answering)
                for (const double by : {factor, 1 / factor}) {
                    Shares tried = shares;
                    const double usual = start[static_cast<std::size_t>(statistic)];
                    shareOf(tried, statistic) =
                        std::clamp(shareOf(tried, statistic) * by, usual / widest, usual * widest);
                    const double lost = loss(tried);
                    if (lost < least - leastGain) {
                        least = lost;
                        shares = tried;
                        better = true;
                    }
                }
        }
    }
    return shares;
}

}  // namespace ebbline::rehearsal
