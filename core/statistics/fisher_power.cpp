#include "core/statistics/fisher_power.h"

#include <algorithm>
#include <cmath>

namespace ebbline::statistics {

namespace {

constexpr double sameProbability = 1 + 1e-7;  // tables as likely as each other, but for rounding
constexpr double negligible = 1e-14;

/// Probabilities of a binomial count around its mode.
struct Binomial {
    long from = 0;
    std::vector<double> probabilities;
};

Binomial binomial(long trials, double share)
{
    if (share <= 0)
        return {0, {1}};
    if (share >= 1)
        return {trials, {1}};
    const double n = static_cast<double>(trials);
    const long mode = std::clamp(static_cast<long>((n + 1) * share), 0L, trials);
    const double odds = share / (1 - share);
    const double k = static_cast<double>(mode);
    const double peak = std::exp(std::lgamma(n + 1) - std::lgamma(k + 1) - std::lgamma(n - k + 1) + k * std::log(share)
                                 + (n - k) * std::log1p(-share));
    std::vector<double> below;
    double p = peak;
    for (long i = mode; i > 0 && p > negligible; --i) {
        p *= static_cast<double>(i) / (static_cast<double>(trials - i + 1) * odds);
        below.push_back(p);
    }
    Binomial result{mode - static_cast<long>(below.size()), {below.rbegin(), below.rend()}};
    result.probabilities.push_back(peak);
    p = peak;
    for (long i = mode; i < trials && p > negligible; ++i) {
        p *= static_cast<double>(trials - i) * odds / static_cast<double>(i + 1);
        result.probabilities.push_back(p);
    }
    return result;
}

}  // namespace

Result<FisherPower> FisherPower::create(long first, long second, double error)
{
    if (first < 1 || first > mostTrials || second < 1 || second > mostTrials)
        return fail(Reason::outOfRange, "groups: want 1..10000 trials");
    if (!(error > 0 && error < 1))
        return fail(Reason::outOfRange, "error: want between 0 and 1");
    FisherPower result(first, second);
    result.m_kept.reserve(static_cast<std::size_t>(first + second + 1));
    std::vector<double> weights;
    for (long sum = 0; sum <= first + second; ++sum) {
        const long least = std::max(0L, sum - second);
        const long most = std::min(first, sum);
        // Hypergeometric weights, 1 at the mode: ratios of neighbours only, so nothing overflows.
        weights.assign(static_cast<std::size_t>(most - least + 1), 0);
        const long mode = std::clamp((sum + 1) * (first + 1) / (first + second + 2), least, most);
        const auto at = [&](long a) -> double& { return weights[static_cast<std::size_t>(a - least)]; };
        const auto up = [&](long a) {
            return static_cast<double>(first - a) * static_cast<double>(sum - a)
                   / (static_cast<double>(a + 1) * static_cast<double>(second - sum + a + 1));
        };
        at(mode) = 1;
        double total = 1;
        for (long a = mode; a < most; ++a)
            total += at(a + 1) = at(a) * up(a);
        for (long a = mode; a > least; --a)
            total += at(a - 1) = at(a) / up(a - 1);

        // The least likely tables go first, from both ends; tables as likely as each other together.
        Kept kept{least, most};
        double gone = 0;
        while (kept.low <= kept.high) {
            const double edge = std::min(at(kept.low), at(kept.high)) * sameProbability;
            Kept next = kept;
            double more = 0;
            while (next.low <= next.high && at(next.low) <= edge)
                more += at(next.low++);
            while (next.low <= next.high && at(next.high) <= edge)
                more += at(next.high--);
            if (gone + more > error * total)
                break;
            gone += more;
            kept = next;
        }
        result.m_kept.push_back(kept);
    }
    return result;
}

Result<double> FisherPower::power(double first, double second) const
{
    if (!(first >= 0 && first <= 1) || !(second >= 0 && second <= 1))
        return fail(Reason::outOfRange, "share: want 0..1");
    const Binomial one = binomial(m_first, first);
    const Binomial other = binomial(m_second, second);
    double rejected = 0;
    for (std::size_t i = 0; i < one.probabilities.size(); ++i)
        for (std::size_t j = 0; j < other.probabilities.size(); ++j) {
            const long a = one.from + static_cast<long>(i);
            const Kept& kept = m_kept[static_cast<std::size_t>(a + other.from + static_cast<long>(j))];
            if (a < kept.low || a > kept.high)
                rejected += one.probabilities[i] * other.probabilities[j];
        }
    return std::clamp(rejected, 0.0, 1.0);
}

Result<std::optional<double>> FisherPower::smallestAbove(double first, double power) const
{
    if (!(power > 0 && power < 1))
        return fail(Reason::outOfRange, "power: want between 0 and 1");
    const auto most = this->power(first, 1);
    if (!most)
        return fail(most.error());
    if (*most < power)
        return std::optional<double>{};
    double low = first;
    double high = 1;
    while (high - low > 1e-6) {
        const double middle = (low + high) / 2;
        (this->power(first, middle).value_or(0) >= power ? high : low) = middle;
    }
    return std::optional(high);
}

}  // namespace ebbline::statistics
