#include "core/statistics/survival.h"

#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>

namespace ebbline::statistics {

namespace {

/// A curve that is at one half by counting may miss it by rounding.
constexpr double rounding = 1e-12;

}  // namespace

std::optional<double> SurvivalCurve::at(double time) const
{
    double survival = 1;
    for (const SurvivalStep& step : steps) {
        if (step.time > time)
            return survival;
        survival = step.survival;
    }
    if (time > lastSeen && survival > 0)
        return std::nullopt;
    return survival;
}

std::optional<double> SurvivalCurve::median() const
{
    for (const SurvivalStep& step : steps)
        if (step.survival <= 0.5 + rounding)
            return step.time;
    return std::nullopt;
}

Result<SurvivalCurve> kaplanMeier(std::span<const Followed> followed, double confidence)
{
    if (!(confidence > 0 && confidence < 1))
        return fail(Reason::outOfRange, "confidence: want 0 < confidence < 1");
    if (followed.empty())
        return fail(Reason::notEnough, "nobody was followed");
    for (const Followed& one : followed)
        if (!(one.time >= 0) || !std::isfinite(one.time))
            return fail(Reason::outOfRange, "time: want a finite number >= 0");
    const Result<double> z = normalQuantile(0.5 + confidence / 2);
    if (!z)
        return fail(z.error());

    std::vector<Followed> sorted(followed.begin(), followed.end());
    std::ranges::sort(sorted, {}, &Followed::time);
    SurvivalCurve curve{{}, static_cast<long>(sorted.size()), sorted.back().time};
    double survival = 1, sum = 0;
    for (std::size_t i = 0; i < sorted.size();) {
        const double time = sorted[i].time;
        const auto atRisk = static_cast<long>(sorted.size() - i);
        long events = 0;
        for (; i < sorted.size() && sorted[i].time == time; ++i)
            events += sorted[i].event;
        if (events == 0)
            continue;
        const auto d = static_cast<double>(events), n = static_cast<double>(atRisk);
        SurvivalStep step{time, atRisk, events, 0, std::nullopt, std::nullopt};
        if (events < atRisk) {
            step.survival = survival *= 1 - d / n;
            sum += d / (n * (n - d));
            step.standardError = survival * std::sqrt(sum);
            // log(-log S) is nearer to normal than S, and its limits stay within 0..1.
            const double width = std::exp(*z * std::sqrt(sum) / -std::log(survival));
            step.limits = Interval{std::pow(survival, width), std::pow(survival, 1 / width)};
        }
        curve.steps.push_back(step);
    }
    return curve;
}

Result<RestrictedMean> restrictedMean(const SurvivalCurve& curve, double horizon)
{
    if (!(horizon > 0) || !std::isfinite(horizon))
        return fail(Reason::outOfRange, "horizon: want > 0");
    if (!curve.at(horizon))
        return fail(Reason::notEnough, "horizon: nobody was followed that long");
    // Backwards, so that the area beyond each step is at hand.
    double area = 0, variance = 0, until = horizon;
    for (auto step = curve.steps.rbegin(); step != curve.steps.rend(); ++step) {
        if (step->time >= horizon)
            continue;
        area += step->survival * (until - step->time);
        until = step->time;
        const auto d = static_cast<double>(step->events), n = static_cast<double>(step->atRisk);
        if (step->events < step->atRisk)
            variance += area * area * d / (n * (n - d));
    }
    RestrictedMean mean{area + until, std::nullopt};
    if (variance > 0)
        mean.variance = variance;
    return mean;
}

}  // namespace ebbline::statistics
