#include "core/statistics/local_level_fit.h"

#include <boost/math/tools/minima.hpp>

#include <cmath>
#include <cstdint>
#include <numbers>
#include <optional>

namespace ebbline::statistics {

namespace {

/// Where the first observation is. \returns Reason::notEnough without one, Reason::notFinite.
Result<std::size_t> firstObserved(std::span<const std::vector<double>> steps)
{
    std::optional<std::size_t> first;
    for (std::size_t t = 0; t < steps.size(); ++t)
        for (const double value : steps[t]) {
            if (!std::isfinite(value))
                return fail(Reason::notFinite, "observation: want a finite number");
            if (!first)
                first = t;
        }
    if (!first)
        return fail(Reason::notEnough, "nothing was observed");
    return *first;
}

LocalLevelModel startedBy(const LocalLevelVariances& variances, double firstValue)
{
    return {variances.observation, variances.drift, firstValue, variances.observation};
}

/// The likelihood for drift = ratio x observation variance, split so that the observation variance can
/// be chosen afterwards.
struct Profile {
    double squares = 0;  ///< of the innovations over their relative variance
    double logs = 0;     ///< of the relative variances
    int terms = 0;
};

Profile profileOf(double ratio, std::span<const std::vector<double>> steps)
{
    Profile profile;
    double mean = 0, variance = 0;
    bool started = false;
    for (const std::vector<double>& step : steps) {
        if (started)
            variance += ratio;
        for (const double value : step) {
            if (!started) {
                mean = value;
                variance = 1;
                started = true;
                continue;
            }
            const double total = variance + 1;
            const double innovation = value - mean;
            profile.squares += innovation * innovation / total;
            profile.logs += std::log(total);
            ++profile.terms;
            mean += variance / total * innovation;
            variance -= variance * variance / total;
        }
    }
    return profile;
}

double logLikelihood(const Profile& profile, double observation)
{
    return -0.5 * (profile.terms * std::log(2 * std::numbers::pi * observation) + profile.logs
                   + profile.squares / observation);
}

}  // namespace

Result<double> localLevelLogLikelihood(const LocalLevelVariances& variances, std::span<const std::vector<double>> steps)
{
    if (const auto model = LocalLevelFilter::create(startedBy(variances, 0)); !model)
        return fail(model.error());
    if (const auto first = firstObserved(steps); !first)
        return fail(first.error());
    const Profile profile = profileOf(variances.drift / variances.observation, steps);
    if (profile.terms < 1)
        return fail(Reason::notEnough, "want at least two observations");
    return logLikelihood(profile, variances.observation);
}

Result<LocalLevelFit> fitLocalLevel(std::span<const std::vector<double>> steps)
{
    if (const auto first = firstObserved(steps); !first)
        return fail(first.error());
    const Profile still = profileOf(0, steps);
    if (still.terms < 3)
        return fail(Reason::notEnough, "want at least four observations");
    if (!std::isfinite(still.squares))
        return fail(Reason::notFinite, "observations: too far apart");
    if (!(still.squares > 0))
        return fail(Reason::notEnough, "all observations are equal");

    const auto cost = [&](double logRatio) {
        const Profile profile = profileOf(std::exp(logRatio), steps);
        return -logLikelihood(profile, profile.squares / profile.terms);
    };
    constexpr double from = -25, to = 25;  // of the logarithm of drift over observation variance
    constexpr int parts = 100;
    constexpr double width = (to - from) / parts;
    int best = 0;
    double least = cost(from);
    for (int i = 1; i <= parts; ++i)
        if (const double here = cost(from + i * width); here < least) {
            least = here;
            best = i;
        }
    const double withoutDrift = -logLikelihood(still, still.squares / still.terms);
    if (best == parts)
        return fail(Reason::notEnough, "no noise is seen beside the drift");
    if (best == 0 || withoutDrift <= least) {
        const double observation = still.squares / still.terms;
        return LocalLevelFit{{observation, 0}, -withoutDrift, false};
    }
    std::uintmax_t rounds = 200;
    const auto [logRatio, value] = boost::math::tools::brent_find_minima(
        cost, from + (best - 1) * width, from + (best + 1) * width, 50, rounds);
    const double ratio = std::exp(logRatio);
    const Profile profile = profileOf(ratio, steps);
    const double observation = profile.squares / profile.terms;
    return LocalLevelFit{{observation, ratio * observation}, -value, true};
}

Result<LocalLevelFilter> filterFromNothing(const LocalLevelVariances& variances, std::span<const std::vector<double>> steps)
{
    const auto first = firstObserved(steps);
    if (!first)
        return fail(first.error());
    auto filter = LocalLevelFilter::create(startedBy(variances, steps[*first].front()));
    if (!filter)
        return fail(filter.error());
    for (std::size_t t = *first; t < steps.size(); ++t) {
        if (t > *first)
            filter->advance();
        for (std::size_t i = t == *first ? 1 : 0; i < steps[t].size(); ++i)
            if (const Result<double> seen = filter->observe(steps[t][i]); !seen)
                return fail(seen.error());
    }
    return filter;
}

Result<std::vector<LevelEstimate>> smoothFromNothing(const LocalLevelVariances& variances,
                                                     std::span<const std::vector<double>> steps)
{
    const auto first = firstObserved(steps);
    if (!first)
        return fail(first.error());
    std::vector<std::vector<double>> rest(steps.begin() + static_cast<std::ptrdiff_t>(*first), steps.end());
    const double firstValue = rest.front().front();
    rest.front().erase(rest.front().begin());
    auto smoothed = smooth(startedBy(variances, firstValue), rest);
    if (!smoothed)
        return fail(smoothed.error());
    // Before the first observation the level is only known to have drifted to it.
    std::vector<LevelEstimate> all;
    all.reserve(steps.size());
    for (std::size_t t = 0; t < *first; ++t)
        all.push_back({smoothed->front().mean,
                       smoothed->front().variance + static_cast<double>(*first - t) * variances.drift});
    all.insert(all.end(), smoothed->begin(), smoothed->end());
    return all;
}

}  // namespace ebbline::statistics
