#include "core/learning/resolution.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace ebbline::learning {

namespace {

constexpr double reach = 1.959963984540054;  // normal quantile of 0.975

std::optional<Median> medianOf(const statistics::SurvivalCurve& curve)
{
    const auto days = curve.median();
    if (!days)
        return std::nullopt;
    Median median{*days, {}, {}};
    for (const statistics::SurvivalStep& step : curve.steps) {
        const double low = step.limits ? step.limits->low : step.survival;
        const double high = step.limits ? step.limits->high : step.survival;
        if (!median.low && low <= 0.5)
            median.low = step.time;
        if (!median.high && high <= 0.5)
            median.high = step.time;
    }
    return median;
}

}  // namespace

std::optional<statistics::Followed> resolutionOf(const bands::TaughtCourse& days, recovery::Symptom symptom, Gap gap)
{
    std::map<int, int> worst;  // points by day
    for (const bands::DayScore& score : days)
        if (score.symptom == symptom && score.day >= 0) {
            const auto [place, fresh] = worst.try_emplace(score.day, score.points);
            place->second = std::max(place->second, score.points);
        }
    const bool everAbove =
        std::any_of(worst.begin(), worst.end(), [](const auto& day) { return day.second > resolvedPoints; });
    if (worst.size() < 2 || !everAbove)
        return std::nullopt;

    std::optional<int> lastAbove;
    for (auto day = worst.begin(); day != worst.end();) {
        if (day->second > resolvedPoints) {
            lastAbove = day->first;
            ++day;
            continue;
        }
        auto end = day;
        int observed = 0;
        int last = day->first;
        for (; end != worst.end() && end->second <= resolvedPoints; ++end, ++observed)
            last = end->first;
        const bool lasts = observed >= 2 && (end == worst.end() || last - day->first >= lastingDays);
        // Before it was ever above, there was nothing that could go.
        if (lasts && lastAbove) {
            const double seen = day->first;
            return statistics::Followed{gap == Gap::later ? seen : (*lastAbove + seen) / 2, true};
        }
        day = end;
    }
    return statistics::Followed{static_cast<double>(worst.rbegin()->first), false};
}

std::vector<statistics::Followed> followed(std::span<const PastCourse> courses, recovery::Symptom symptom, Gap gap)
{
    std::vector<statistics::Followed> all;
    for (const PastCourse& course : courses)
        if (const auto one = resolutionOf(course.days, symptom, gap))
            all.push_back(*one);
    return all;
}

Answer<Mean> meanOf(const statistics::SurvivalCurve& curve)
{
    const auto mean = statistics::restrictedMean(curve, horizonDays);
    if (!mean)
        return std::unexpected(
            NotEnough{Lack::followed, std::lround(std::floor(curve.lastSeen)), std::lround(horizonDays)});
    if (!mean->variance)
        return std::unexpected(NotEnough{Lack::spread});
    const double width = reach * std::sqrt(*mean->variance);
    return Mean{mean->mean, *mean->variance, std::max(0.0, mean->mean - width),
                std::min(horizonDays, mean->mean + width)};
}

Resolution resolutionOf(std::span<const PastCourse> courses, recovery::Symptom symptom)
{
    Resolution resolution;
    resolution.symptom = symptom;
    const auto middle = followed(courses, symptom, Gap::middle);
    resolution.courses = static_cast<long>(middle.size());
    resolution.never = static_cast<long>(courses.size()) - resolution.courses;
    resolution.resolved = std::count_if(middle.begin(), middle.end(), [](const auto& one) { return one.event; });
    const NotEnough few{Lack::courses, resolution.courses, fewestCourses};
    resolution.times = std::unexpected(few);
    if (resolution.courses < fewestCourses)
        return resolution;
    auto curve = statistics::kaplanMeier(middle);
    const auto later = statistics::kaplanMeier(followed(courses, symptom, Gap::later));
    if (!curve || !later)
        return resolution;
    const auto median = medianOf(*curve);
    auto mean = meanOf(*curve);
    resolution.times = Times{std::move(*curve), median, medianOf(*later), std::move(mean)};
    return resolution;
}

}  // namespace ebbline::learning
