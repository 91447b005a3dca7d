#include "core/curves/curve.h"

#include "core/bands/centile.h"
#include "core/curves/daily.h"
#include "core/statistics/least_squares.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <numeric>

namespace ebbline::curves {

namespace {

constexpr int bandToDay = 21;
constexpr int fewestForForecast = 3;
constexpr std::size_t fewestForHalfLife = 4;
constexpr int fewestForAsymmetry = 3;
constexpr int resolvedPoints = 1;
constexpr int fewestPointsForIndex = 4;   // statistics of a ratio near zero say nothing

std::vector<Smoothed> smoothedDays(const Daily& daily, const bands::Band& band, recovery::Symptom symptom)
{
    const std::vector<statistics::LevelEstimate> levels = levelsOf(daily, band, symptom);
    std::vector<Smoothed> curve;
    curve.reserve(levels.size());
    auto observed = daily.days.begin();
    for (const statistics::LevelEstimate& level : levels) {
        const int day = daily.days.front().day + static_cast<int>(curve.size());
        while (observed->day < day)
            ++observed;
        const double reach = tail * std::sqrt(level.variance);
        const auto [low, middle, high] =
            band.pointsAt(symptom, day, std::array{level.mean - reach, level.mean, level.mean + reach});
        curve.push_back({day, middle, observed->day == day, low, high});
    }
    return curve;
}

Forecast forecastFor(int day, const Daily& daily, const bands::Band& band, recovery::Symptom symptom)
{
    const bands::Distribution scores = scoresExpected(daily, band, symptom, day);
    return {day, bands::centileOf(scores, 0.1), bands::centileOf(scores, 0.5), bands::centileOf(scores, 0.9),
            std::accumulate(scores.begin() + 3, scores.end(), 0.0), scores};
}

/// Days from the peak until the score halves, by a straight line through the logarithms of score
/// plus one half, up to the first zero: what follows a zero only says that it is gone.
std::optional<double> halfLife(const Daily& daily, int peakDay)
{
    std::vector<statistics::Point> points;
    for (const DayOfScores& day : daily.days) {
        if (day.day < peakDay)
            continue;
        points.push_back({static_cast<double>(day.day - peakDay), std::log(day.median + 0.5)});
        if (day.median == 0)
            break;
    }
    if (points.size() < fewestForHalfLife)
        return std::nullopt;
    const Result<statistics::LineFit> line = statistics::leastSquares(points);
    return line && line->slope < -1e-9 ? std::optional(std::log(2.0) / -line->slope) : std::nullopt;
}

/// Trapezoids between observed days.
std::optional<double> areaUnder(const Daily& daily)
{
    if (daily.days.size() < 2)
        return std::nullopt;
    double area = 0;
    for (std::size_t i = 1; i < daily.days.size(); ++i)
        area += (daily.days[i].day - daily.days[i - 1].day) * (daily.days[i].median + daily.days[i - 1].median) / 2.0;
    return area;
}

/// The first of two observed days in a row at 1 or below, if it stays there to the end. What was never above it has
/// nothing to resolve.
std::optional<int> resolvedOn(const Daily& daily)
{
    std::optional<int> since;
    int days = 0;
    bool everAbove = false;
    for (const DayOfScores& day : daily.days) {
        if (day.median > resolvedPoints) {
            everAbove = true;
            since.reset();
            days = 0;
            continue;
        }
        if (!since)
            since = day.day;
        ++days;
    }
    return everAbove && days >= 2 ? since : std::nullopt;
}

}  // namespace

std::vector<Smoothed> smoothedCourse(const recovery::Stream& stream, const clock::Moment& treated,
                                     std::span<const Sample> samples, const bands::Band& band)
{
    return smoothedDays(dailyOf(samples, treated), band, stream.symptom);
}

std::optional<Asymmetry> asymmetryOf(std::span<const Sample> left, std::span<const Sample> right,
                                     const clock::Moment& treated)
{
    const Daily leftDays = dailyOf(left, treated);
    const Daily rightDays = dailyOf(right, treated);
    Asymmetry asymmetry{};
    int sumOfDifferences = 0;
    int sum = 0;
    auto other = rightDays.days.begin();
    for (const DayOfScores& day : leftDays.days) {
        while (other != rightDays.days.end() && other->day < day.day)
            ++other;
        if (other == rightDays.days.end() || other->day != day.day)
            continue;
        const int difference = day.median - other->median;
        ++asymmetry.days;
        sumOfDifferences += difference;
        sum += day.median + other->median;
        if (asymmetry.days == 1 || std::abs(difference) > std::abs(asymmetry.largest)) {
            asymmetry.largest = difference;
            asymmetry.largestDay = day.day;
        }
    }
    if (asymmetry.days < fewestForAsymmetry)
        return std::nullopt;
    asymmetry.meanDifference = static_cast<double>(sumOfDifferences) / asymmetry.days;
    if (sum >= fewestPointsForIndex)
        asymmetry.index = static_cast<double>(sumOfDifferences) / sum;
    return asymmetry;
}

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
    for (const Point& point : curve.points)
        if (!curve.peak || point.points > curve.peak->points)
            curve.peak = point;

    const Daily daily = dailyOf(samples, treated);
    curve.smoothed = smoothedDays(daily, band, stream.symptom);
    if (followUpDay > daily.days.back().day && static_cast<int>(daily.days.size()) >= fewestForForecast)
        curve.forecast = forecastFor(followUpDay, daily, band, stream.symptom);
    curve.halfLifeDays = halfLife(daily, static_cast<int>(curve.peak->day));
    curve.area = areaUnder(daily);
    curve.resolvedOnDay = resolvedOn(daily);
    return curve;
}

}  // namespace ebbline::curves
