#include "core/statistics/hazard_ratio.h"

#include "core/statistics/distributions.h"

#include <cmath>
#include <map>

namespace ebbline::statistics {

namespace {

/// At one time: who has the event, who is at risk; of the first and the second group.
struct Time {
    double events[2]{};
    double leaving[2]{};
    double atRisk[2]{};
};

std::vector<Time> timesOf(std::span<const Followed> first, std::span<const Followed> second)
{
    std::map<double, Time> byTime;
    int group = 0;
    for (const std::span<const Followed> followed : {first, second}) {
        for (const auto& [time, event] : followed) {
            byTime[time].events[group] += event ? 1 : 0;
            byTime[time].leaving[group] += 1;
        }
        ++group;
    }
    std::vector<Time> times;
    double left[2]{static_cast<double>(first.size()), static_cast<double>(second.size())};
    for (auto& [at, time] : byTime) {
        for (int g = 0; g < 2; ++g) {
            time.atRisk[g] = left[g];
            left[g] -= time.leaving[g];
        }
        if (time.events[0] + time.events[1] > 0)
            times.push_back(time);
    }
    return times;
}

/// Slope and curvature of the partial likelihood's logarithm.
struct Slope {
    double first = 0;
    double information = 0;
};

Slope slopeAt(const std::vector<Time>& times, double logRatio, Ties ties)
{
    const double ratio = std::exp(logRatio);
    Slope slope;
    for (const Time& time : times) {
        const double events = time.events[0] + time.events[1];
        slope.first += time.events[1];
        for (int k = 0; k < static_cast<int>(events); ++k) {
            const double gone = ties == Ties::efron ? k / events : 0;
            const double other = time.atRisk[0] - gone * time.events[0];
            const double own = ratio * (time.atRisk[1] - gone * time.events[1]);
            const double share = own / (own + other);
            slope.first -= share;
            slope.information += share * (1 - share);
        }
    }
    return slope;
}

}  // namespace

Result<HazardRatio> hazardRatio(std::span<const Followed> first, std::span<const Followed> second, Ties ties,
                                double confidence)
{
    if (!(confidence > 0 && confidence < 1))
        return fail(Reason::outOfRange, "confidence: want above 0 and below 1");
    for (const std::span<const Followed> followed : {first, second}) {
        if (followed.empty())
            return fail(Reason::notEnough, "a group is empty");
        for (const Followed& one : followed)
            if (!std::isfinite(one.time) || one.time < 0)
                return fail(Reason::outOfRange, "time: want a finite number of 0 or more");
    }
    const std::vector<Time> times = timesOf(first, second);
    // The likelihood rises for ever unless each end of the line pulls back.
    constexpr double far = 30;
    if (!(slopeAt(times, -far, ties).first > 1e-9 && slopeAt(times, far, ties).first < -1e-9))
        return fail(Reason::notEnough, "the groups' events do not mix");
    double low = -far, high = far, logRatio = 0;
    for (int i = 0; i < 200; ++i) {
        const Slope slope = slopeAt(times, logRatio, ties);
        (slope.first > 0 ? low : high) = logRatio;
        const double step = slope.first / slope.information;
        if (std::abs(step) < 1e-13)
            break;
        const double next = logRatio + step;
        logRatio = next > low && next < high ? next : (low + high) / 2;
    }
    const double error = 1 / std::sqrt(slopeAt(times, logRatio, ties).information);
    const Result<double> z = normalQuantile(0.5 + confidence / 2);
    if (!z)
        return fail(z.error());
    return HazardRatio{logRatio, error, std::exp(logRatio),
                       {std::exp(logRatio - *z * error), std::exp(logRatio + *z * error)}};
}

}  // namespace ebbline::statistics
