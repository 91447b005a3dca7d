#include "core/curves/curve.h"

#include "core/statistics/distributions.h"
#include "core/statistics/local_level.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace ebbline::curves {

namespace {

constexpr int bandToDay = 21;
constexpr int fewestForForecast = 3;
constexpr int fewestForHalfLife = 4;
constexpr int resolvedPoints = 1;

double fractionalDay(const clock::Moment& treated, const clock::Moment& at)
{
    // Days as drawn: the whole day is the calendar day, the fraction the time of that day.
    return std::max(0.0, clock::dayOfRecovery(treated, at) + at.minuteOfDay() / 1440.0);
}

/// Lower median of a day's scores: it stays on the scale.
int lowerMedian(std::vector<int> scores)
{
    std::sort(scores.begin(), scores.end());
    return scores[(scores.size() - 1) / 2];
}

Forecast forecastFor(int day, const statistics::LevelEstimate& z, const bands::Band& band, recovery::Symptom symptom)
{
    const double spread = std::sqrt(z.variance);
    const double tail = statistics::normalQuantile(0.9).value_or(1.2816);
    const auto scoreAt = [&](double zScore) {
        return band.centile(symptom, day, std::clamp(statistics::normalCdf(zScore), 1e-6, 1 - 1e-6));
    };
    Forecast forecast{day, scoreAt(z.mean - tail * spread), scoreAt(z.mean), scoreAt(z.mean + tail * spread), 0};
    // A score of three or more: the level's z lies above the upper edge of score 2.
    double upToTwo = 0;
    for (std::size_t k = 0; k < 3; ++k)
        upToTwo += band.at(symptom, day)[k];
    if (upToTwo < 1) {
        const double edge = statistics::normalQuantile(std::clamp(upToTwo, 1e-9, 1 - 1e-9)).value_or(0);
        forecast.probabilityOfThreeOrMore = 1 - statistics::normalCdf((edge - z.mean) / spread);
    }
    return forecast;
}

/// Days from the peak until the score halves, by a straight line through the logarithms of score
/// plus one half; empty if it does not fall.
std::optional<double> halfLife(const std::map<int, int>& daily, int peakDay)
{
    double n = 0, sumX = 0, sumY = 0, sumXX = 0, sumXY = 0;
    for (auto day = daily.lower_bound(peakDay); day != daily.end(); ++day) {
        const double x = day->first - peakDay;
        const double y = std::log(day->second + 0.5);
        n += 1;
        sumX += x;
        sumY += y;
        sumXX += x * x;
        sumXY += x * y;
    }
    const double spread = n * sumXX - sumX * sumX;
    if (n < fewestForHalfLife || spread <= 0)
        return std::nullopt;
    const double slope = (n * sumXY - sumX * sumY) / spread;
    if (slope >= -1e-9)
        return std::nullopt;
    return std::log(2.0) / -slope;
}

/// Trapezoids between observed days.
std::optional<double> areaUnder(const std::map<int, int>& daily)
{
    if (daily.size() < 2)
        return std::nullopt;
    double area = 0;
    for (auto day = std::next(daily.begin()); day != daily.end(); ++day) {
        const auto before = std::prev(day);
        area += (day->first - before->first) * (day->second + before->second) / 2.0;
    }
    return area;
}

/// The first of two observed days in a row at 1 or below, if it stays there to the end.
std::optional<int> resolvedOn(const std::map<int, int>& daily)
{
    std::optional<int> since;
    int days = 0;
    for (const auto& [day, points] : daily) {
        if (points > resolvedPoints) {
            since.reset();
            days = 0;
            continue;
        }
        if (!since)
            since = day;
        ++days;
    }
    return days >= 2 ? since : std::nullopt;
}

}  // namespace

Curve curveOf(const recovery::Stream& stream, const clock::Moment& treated, std::span<const Sample> samples,
              const bands::Band& band, int followUpDay)
{
    Curve curve;
    curve.stream = stream;
    curve.provenance = band.provenance();
    for (int day = 0; day <= bandToDay; ++day)
        curve.band.push_back({day, band.inner(stream.symptom, day), band.outer(stream.symptom, day)});

    for (const Sample& sample : samples)
        curve.points.push_back({sample.at, fractionalDay(treated, sample.at), sample.score.points(), sample.late, sample.amended});
    std::stable_sort(curve.points.begin(), curve.points.end(),
                     [](const Point& a, const Point& b) { return a.at.at < b.at.at; });
    if (curve.points.empty())
        return curve;

    std::map<int, std::vector<int>> byDay;
    for (const Point& point : curve.points) {
        byDay[static_cast<int>(point.day)].push_back(point.points);
        if (!curve.peak || point.points > curve.peak->points)
            curve.peak = point;
    }
    std::map<int, int> daily;
    for (const auto& [day, scores] : byDay)
        daily[day] = lowerMedian(scores);

    const int first = daily.begin()->first;
    const int last = daily.rbegin()->first;
    std::vector<std::vector<double>> steps(static_cast<std::size_t>(last - first) + 1);
    for (const auto& [day, scores] : byDay)
        for (const int points : scores)
            steps[static_cast<std::size_t>(day - first)].push_back(band.z(stream.symptom, day, points));
    const bands::Movement& movement = band.movement(stream.symptom);
    const statistics::LocalLevelModel levelOfZ{
        .observation = movement.noise, .drift = movement.drift, .startMean = 0, .startVariance = movement.start};
    if (const auto smoothed = statistics::smooth(levelOfZ, steps))
        for (int day = first; day <= last; ++day) {
            const std::size_t step = static_cast<std::size_t>(day - first);
            curve.smoothed.push_back({day, band.pointsAt(stream.symptom, day, (*smoothed)[step].mean), daily.contains(day)});
            // The last smoothed level is the filtered one: nothing after it was seen.
            if (day == last && followUpDay > last && static_cast<int>(daily.size()) >= fewestForForecast) {
                const statistics::LevelEstimate& level = (*smoothed)[step];
                curve.forecast = forecastFor(
                    followUpDay,
                    {level.mean, level.variance + (followUpDay - last) * levelOfZ.drift + levelOfZ.observation}, band,
                    stream.symptom);
            }
        }

    curve.halfLifeDays = halfLife(daily, static_cast<int>(curve.peak->day));
    curve.area = areaUnder(daily);
    curve.resolvedOnDay = resolvedOn(daily);
    return curve;
}

}  // namespace ebbline::curves
