#include "core/statistics/local_level_fit.h"

#include <Eigen/Core>

#include <algorithm>
#include <cmath>
#include <limits>
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

/// The observations in order, each with the steps that passed since the one before it.
struct Reading {
    double value;
    double elapsed;
};

std::vector<Reading> readingsOf(std::span<const std::vector<double>> steps)
{
    std::vector<Reading> readings;
    readings.reserve(steps.size());
    std::size_t last = 0;
    for (std::size_t t = 0; t < steps.size(); ++t)
        for (const double value : steps[t]) {
            readings.push_back({value, readings.empty() ? 0.0 : static_cast<double>(t - last)});
            last = t;
        }
    return readings;
}

/// Ratios that are tried at once: the recursion waits for its own divisions, so that eight of them
/// take hardly longer than one.
constexpr Eigen::Index lanes = 8;
using Lanes = Eigen::Array<double, lanes, 1>;

/// The likelihood for drift = ratio x observation variance, split so that the observation variance can
/// be chosen afterwards.
struct Profiles {
    Lanes squares = Lanes::Zero();  ///< of the innovations over their relative variance
    Lanes logs = Lanes::Zero();     ///< of the relative variances
    double terms = 0;

    Lanes observation() const { return squares / terms; }
    /// With the likeliest observation variance of each.
    Lanes logLikelihood() const
    {
        return -0.5 * (terms * (2 * std::numbers::pi * observation()).log() + logs + terms);
    }
};

Profiles profilesOf(const Lanes& ratios, std::span<const Reading> readings)
{
    constexpr double most = 1e150;  // logarithms are taken of products, before those grow too large
    Profiles profiles;
    Lanes mean = Lanes::Constant(readings.front().value);
    Lanes variance = Lanes::Ones();
    Lanes product = Lanes::Ones();
    for (const Reading& reading : readings.subspan(1)) {
        variance += reading.elapsed * ratios;
        const Lanes total = variance + 1;
        const Lanes precision = 1 / total;
        const Lanes innovation = reading.value - mean;
        const Lanes gain = variance * precision;
        profiles.squares += innovation * innovation * precision;
        mean += gain * innovation;
        variance = gain;  // variance - variance^2 / (variance + 1)
        product *= total;
        if ((product > most).any()) {
            profiles.logs += product.log();
            product.setOnes();
        }
    }
    profiles.logs += product.log();
    profiles.terms = static_cast<double>(readings.size() - 1);
    return profiles;
}

struct Profile {
    double squares;
    double logs;
    double terms;
};

Profile profileOf(double ratio, std::span<const Reading> readings)
{
    const Profiles profiles = profilesOf(Lanes::Constant(ratio), readings);
    return {profiles.squares[0], profiles.logs[0], profiles.terms};
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
    const std::vector<Reading> readings = readingsOf(steps);
    if (readings.size() < 2)
        return fail(Reason::notEnough, "want at least two observations");
    return logLikelihood(profileOf(variances.drift / variances.observation, readings), variances.observation);
}

namespace {

constexpr double lowest = -25, highest = 25;  // logarithm of drift over observation variance, looked through
constexpr Eigen::Index places = 104;          // in so many places, a multiple of `lanes`
constexpr double stepBetween = (highest - lowest) / (places - 1);
constexpr double inner = (lanes - 1.0) / (lanes + 1.0);  // of a stretch, where its inner points end
constexpr double closeEnough = 1e-3;          // from here on the likelihood is a parabola

struct Best {
    Eigen::Index place;
    double logRatio;
    double logLikelihood;
};

Lanes around(double centre, double reach)
{
    return Lanes::LinSpaced(centre - reach, centre + reach);
}

Lanes likelihoodsAt(const Lanes& logRatios, std::span<const Reading> readings)
{
    return profilesOf(logRatios.exp(), readings).logLikelihood();
}

Best likeliestPlace(std::span<const Reading> readings)
{
    Best best{0, lowest, -std::numeric_limits<double>::infinity()};
    for (Eigen::Index from = 0; from < places; from += lanes) {
        const double first = lowest + stepBetween * static_cast<double>(from);
        const Lanes logRatios = Lanes::LinSpaced(first, first + stepBetween * (lanes - 1));
        Eigen::Index place = 0;
        if (const double value = likelihoodsAt(logRatios, readings).maxCoeff(&place); value > best.logLikelihood)
            best = {from + place, logRatios[place], value};
    }
    return best;
}

/// Between the neighbours of the best place: closer and closer, then the top of a parabola, because so
/// close to it the likelihoods differ by their rounding alone.
double likeliestLogRatio(Best best, std::span<const Reading> readings)
{
    double reach = stepBetween;
    for (; reach > closeEnough; reach *= 2.0 / (lanes + 1)) {
        const Lanes logRatios = around(best.logRatio, inner * reach);
        Eigen::Index place = 0;
        if (const double value = likelihoodsAt(logRatios, readings).maxCoeff(&place); value > best.logLikelihood)
            best = {0, logRatios[place], value};
    }
    const Lanes off = around(0, inner * reach);
    const Lanes values = likelihoodsAt(best.logRatio + off, readings) - best.logLikelihood;
    const Lanes bent = off.square() - off.square().mean();
    const double slope = (off * values).sum() / off.square().sum();
    const double bend = (bent * values).sum() / bent.square().sum();
    return bend < 0 ? best.logRatio + std::clamp(-slope / (2 * bend), -reach, reach) : best.logRatio;
}

}  // namespace

Result<LocalLevelFit> fitLocalLevel(std::span<const std::vector<double>> steps)
{
    if (const auto first = firstObserved(steps); !first)
        return fail(first.error());
    const std::vector<Reading> readings = readingsOf(steps);
    if (readings.size() < 4)
        return fail(Reason::notEnough, "want at least four observations");
    const Profile still = profileOf(0, readings);
    if (!std::isfinite(still.squares))
        return fail(Reason::notFinite, "observations: too far apart");
    if (!(still.squares > 0))
        return fail(Reason::notEnough, "all observations are equal");

    const Best best = likeliestPlace(readings);
    const double without = still.squares / still.terms;
    const double withoutDrift = logLikelihood(still, without);
    if (best.place == places - 1)
        return fail(Reason::notEnough, "no noise is seen beside the drift");
    if (best.place == 0 || withoutDrift >= best.logLikelihood)
        return LocalLevelFit{{without, 0}, withoutDrift, false};
    const double ratio = std::exp(likeliestLogRatio(best, readings));
    const Profile profile = profileOf(ratio, readings);
    const double observation = profile.squares / profile.terms;
    return LocalLevelFit{{observation, ratio * observation}, logLikelihood(profile, observation), true};
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
