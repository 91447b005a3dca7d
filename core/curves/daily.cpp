#include "core/curves/daily.h"

#include <algorithm>

namespace ebbline::curves {

Daily dailyOf(std::span<const Sample> samples, const clock::Moment& treated)
{
    const clock::LocalDay start = treated.day();
    std::vector<std::pair<int, int>> scores;
    scores.reserve(samples.size());
    bool ordered = true;
    for (const Sample& sample : samples) {
        const int day = std::max(0, static_cast<int>((sample.at.day() - start).count()));
        const std::pair next{day, sample.score.points()};
        ordered = ordered && (scores.empty() || scores.back() <= next);
        scores.push_back(next);
    }
    if (!ordered)
        std::sort(scores.begin(), scores.end());

    Daily daily;
    daily.days.reserve(scores.size());
    daily.scores.reserve(scores.size());
    for (const auto& [day, points] : scores) {
        if (daily.days.empty() || daily.days.back().day != day)
            daily.days.push_back({day, daily.scores.size(), 0, points});
        daily.scores.push_back(points);
        DayOfScores& today = daily.days.back();
        ++today.count;
        if (today.count > 1)
            today.median = daily.scores[today.first + (today.count - 1) / 2];
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

statistics::LevelEstimate forecastOf(const statistics::LevelEstimate& last, int days, const bands::Movement& movement)
{
    return {last.mean, last.variance + days * movement.drift + movement.noise};
}

double fractionalDay(const clock::Moment& treated, const clock::Moment& at)
{
    return std::max(0.0, clock::dayOfRecovery(treated, at) + at.minuteOfDay() / 1440.0);
}

}  // namespace ebbline::curves
