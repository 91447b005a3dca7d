#include "core/curves/daily.h"

#include <algorithm>

namespace ebbline::curves {

Daily dailyOf(std::span<const Sample> samples, const clock::Moment& treated)
{
    std::vector<std::pair<int, int>> scores;
    scores.reserve(samples.size());
    for (const Sample& sample : samples)
        scores.emplace_back(std::max(0, clock::dayOfRecovery(treated, sample.at)), sample.score.points());
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
        double sum = 0;
        for (std::size_t i = 0; i < day.count; ++i)
            sum += band.z(symptom, day.day, daily.scores[day.first + i]);
        const double count = static_cast<double>(day.count);
        const double gain = variance / (variance + movement.noise / count);
        mean += gain * (sum / count - mean);
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

double fractionalDay(const clock::Moment& treated, const clock::Moment& at)
{
    return std::max(0.0, clock::dayOfRecovery(treated, at) + at.minuteOfDay() / 1440.0);
}

}  // namespace ebbline::curves
