#include "core/statistics/local_level.h"

#include <cmath>

namespace ebbline::statistics {

Result<LocalLevelFilter> LocalLevelFilter::create(const LocalLevelModel& model)
{
    if (!std::isfinite(model.observation) || model.observation <= 0)
        return fail(Reason::outOfRange, "observation variance: want > 0");
    if (!std::isfinite(model.drift) || model.drift < 0)
        return fail(Reason::outOfRange, "drift variance: want >= 0");
    if (!std::isfinite(model.startMean))
        return fail(Reason::outOfRange, "start mean: want a finite number");
    if (!std::isfinite(model.startVariance) || model.startVariance < 0)
        return fail(Reason::outOfRange, "start variance: want >= 0");
    return LocalLevelFilter(model);
}

Result<double> LocalLevelFilter::observe(double value)
{
    if (!std::isfinite(value))
        return fail(Reason::notFinite, "observation: want a finite number");
    const double total = m_level.variance + m_model.observation;
    const double innovation = value - m_level.mean;
    const double gain = m_level.variance / total;
    m_level.mean += gain * innovation;
    m_level.variance *= 1 - gain;
    return innovation / std::sqrt(total);
}

void LocalLevelFilter::advance(int steps) noexcept
{
    m_level.variance += steps * m_model.drift;
}

LevelEstimate LocalLevelFilter::forecast(int steps) const noexcept
{
    return {m_level.mean, m_level.variance + steps * m_model.drift + m_model.observation};
}

Result<std::vector<LevelEstimate>> smooth(const LocalLevelModel& model, std::span<const std::vector<double>> steps)
{
    Result<LocalLevelFilter> filter = LocalLevelFilter::create(model);
    if (!filter)
        return fail(filter.error());
    std::vector<LevelEstimate> estimates;
    estimates.reserve(steps.size());
    for (std::size_t t = 0; t < steps.size(); ++t) {
        if (t > 0)
            filter->advance();
        for (const double value : steps[t])
            if (const Result<double> seen = filter->observe(value); !seen)
                return fail(seen.error());
        estimates.push_back(filter->level());
    }
    // Backwards: each filtered level is drawn towards the smoothed next one.
    for (std::size_t t = estimates.size(); t-- > 1;) {
        LevelEstimate& now = estimates[t - 1];
        const double predicted = now.variance + model.drift;
        if (predicted <= 0)
            continue;
        const double share = now.variance / predicted;
        now.mean += share * (estimates[t].mean - now.mean);
        now.variance += share * share * (estimates[t].variance - predicted);
    }
    return estimates;
}

}  // namespace ebbline::statistics
