#include "core/curves/daily.h"

#include <algorithm>
#include <cmath>

namespace ebbline::curves {

Daily dailyOf(std::span<const Sample> samples, const clock::Moment& treated)
{
    const clock::LocalDay start = treated.day();
    const auto scored = [&](const Sample& sample) {
        return std::pair{std::max(0, static_cast<int>((sample.at.day() - start).count())), sample.score.points()};
    };
    Daily daily;
    daily.days.reserve(samples.size());
    daily.scores.reserve(samples.size());
    const auto add = [&](const std::pair<int, int>& next) {
        const auto [day, points] = next;
        if (daily.days.empty() || daily.days.back().day != day)
            daily.days.push_back({day, daily.scores.size(), 0, points});
        daily.scores.push_back(points);
        DayOfScores& today = daily.days.back();
        ++today.count;
        if (today.count > 1)
            today.median = daily.scores[today.first + (today.count - 1) / 2];
    };
    const auto comesNext = [&](const std::pair<int, int>& next) {
        return daily.days.empty() || std::pair{daily.days.back().day, daily.scores.back()} <= next;
    };
    // Nearly always they come in this order.
    for (const Sample& sample : samples) {
        const auto next = scored(sample);
        if (comesNext(next)) {
            add(next);
            continue;
        }
        std::vector<std::pair<int, int>> sorted;
        sorted.reserve(samples.size());
        for (const Sample& each : samples)
            sorted.push_back(scored(each));
        std::sort(sorted.begin(), sorted.end());
        daily.days.clear();
        daily.scores.clear();
        for (const auto& each : sorted)
            add(each);
        break;
    }
    return daily;
}

std::vector<statistics::LevelEstimate> levelsOf(const Daily& daily, const bands::Band& band, recovery::Symptom symptom)
{
    std::vector<statistics::LevelEstimate> levels;
    if (daily.days.empty())
        return levels;
    const bands::Movement& movement = band.movement(symptom);
    const int first = daily.days.front().day;
    levels.reserve(static_cast<std::size_t>(daily.days.back().day - first) + 1);
    double mean = 0;
    double variance = movement.start;
    for (const DayOfScores& day : daily.days) {
        for (int missing = first + static_cast<int>(levels.size()); missing < day.day; ++missing) {
            levels.push_back({mean, variance + movement.drift});
            variance += movement.drift;
        }
        if (!levels.empty())
            variance += movement.drift;
        double value = 0;
        for (std::size_t i = 0; i < day.count; ++i)
            value += band.z(symptom, day.day, daily.scores[day.first + i]);
        double noise = movement.noise;
        if (day.count > 1) {
            value /= static_cast<double>(day.count);
            noise /= static_cast<double>(day.count);
        }
        const double gain = variance / (variance + noise);
        mean += gain * (value - mean);
        variance *= 1 - gain;
        levels.push_back({mean, variance});
    }
    for (std::size_t i = levels.size() - 1; i-- > 0;) {
        const double predicted = levels[i].variance + movement.drift;
        if (predicted <= 0)
            continue;
        const double back = levels[i].variance / predicted;
        levels[i].mean += back * (levels[i + 1].mean - levels[i].mean);
        levels[i].variance += back * back * (levels[i + 1].variance - predicted);
    }
    return levels;
}

statistics::OrdinalLevelModel placeOf(const bands::Movement& movement)
{
    if (movement.start <= 0)
        return {.share = 0, .kept = 0};
    // Noise is above 0 in every band, so the share is below 1, if not by rounding.
    return {.share = std::min(movement.start / (movement.start + movement.noise), std::nextafter(1.0, 0.0)),
            .kept = std::sqrt(std::max(0.0, 1 - movement.drift / movement.start))};
}

bands::Distribution scoresExpected(const Daily& daily, const bands::Band& band, recovery::Symptom symptom, int day)
{
    Result<statistics::OrdinalLevelFilter> place = statistics::OrdinalLevelFilter::create(placeOf(band.movement(symptom)));
    if (!place || daily.days.empty())
        return band.at(symptom, day);
    int now = daily.days.front().day;
    for (const DayOfScores& observed : daily.days) {
        place->advance(observed.day - now);
        now = observed.day;
        for (std::size_t i = 0; i < observed.count; ++i)
            (void)place->observe(band.at(symptom, now), static_cast<std::size_t>(daily.scores[observed.first + i]));
    }
    place->advance(day - now);
    bands::Distribution scores{};
    const std::vector<double> likely = place->likely(band.at(symptom, day));
    std::copy(likely.begin(), likely.end(), scores.begin());
    return scores;
}

double fractionalDay(const clock::Moment& treated, const clock::Moment& at)
{
    return std::max(0.0, clock::dayOfRecovery(treated, at) + at.minuteOfDay() / 1440.0);
}

}  // namespace ebbline::curves
