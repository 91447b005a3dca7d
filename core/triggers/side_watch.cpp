#include "core/triggers/side_watch.h"

#include "core/recovery/symptom.h"

#include <algorithm>
#include <cmath>

namespace ebbline::triggers {

namespace {

using recovery::Symptom;

// Design constants; what each is for and how it was chosen: docs/statistics/triggers.md.
constexpr double sideWeight = 0.3;
constexpr double scaleOffset = 6;         // points
constexpr double fillingSlack = 1.25;
constexpr double fillingLimit = 4;
constexpr double sameStateHours = 3;
constexpr double poolSlack = 0.8;
constexpr double poolLimit = 3;
constexpr double otherSideShare = 0.4;
constexpr double symptomsAlike = 0.5;     // correlation of the surprises of one side
constexpr double sidesAlike = 0.5;        // correlation between the sides
constexpr double differencesAlike = 0.1;  // correlation of the differences between symptoms

struct Weight {
    Symptom symptom;
    double weight;
};
/// Blood shows as swelling and pain at once, as tightness less, as a bruise later.
constexpr std::array<Weight, 4> fillingWeights{
    {{Symptom::swelling, 1.0}, {Symptom::pain, 1.0}, {Symptom::tightness, 0.7}, {Symptom::bruising, 0.5}}};

/// The logarithm makes a difference of points count alike at low and at high levels.
std::array<double, 11> scaleOfPoints()
{
    std::array<double, 11> scale{};
    for (std::size_t points = 0; points < scale.size(); ++points)
        scale[points] = scaleOffset * std::log(scaleOffset + static_cast<double>(points));
    return scale;
}

/// How far the sides of an ordinary course lie apart, points, by their mean level (an assumption).
double usualSideSpread(double meanLevel)
{
    return 0.5 + 0.2 * meanLevel;
}

/// Spread of a weighted mean of equally correlated quantities of spread one.
double spreadOfMean(double sum, double sumOfSquares, double correlation)
{
    return std::sqrt((sumOfSquares + correlation * (sum * sum - sumOfSquares)) / (sum * sum));
}

}  // namespace

void SideWatch::start(int left, int right)
{
    m_before = sideWeight * (left - right) / usualSideSpread((left + right) / 2.0);
}

double SideWatch::feed(int day, int left, int right)
{
    if (m_day >= 0 && m_day != day)
        m_before = m_now;
    m_day = day;
    const double difference = (left - right) / usualSideSpread((left + right) / 2.0);
    m_now = m_before + sideWeight * (difference - m_before);
    return m_now;
}

SideDifferences differencesOf(const SideScores& scores)
{
    static const std::array<double, 11> scale = scaleOfPoints();
    const auto scaled = [](int points) { return scale[static_cast<std::size_t>(std::clamp(points, 0, 10))]; };
    SideDifferences differences{};
    for (std::size_t i = 0; i < fillingWeights.size(); ++i) {
        const auto& [left, right] = scores[static_cast<std::size_t>(fillingWeights[i].symptom) - 1];
        if (left && right)
            differences[i] = scaled(*left) - scaled(*right);
    }
    return differences;
}

FillingWatch::FillingWatch(const bands::Movement& movement) : m_movement(movement)
{
    for (Level& level : m_before.levels)
        level.variance = movement.start;
    m_now = m_before;
}

std::array<double, 2> FillingWatch::feed(double hours, const SideDifferences& differences)
{
    if (!m_fed || hours - m_now.hours >= sameStateHours)
        m_before = m_now;
    m_fed = true;
    State next = m_before;
    next.hours = hours;
    double sum = 0;
    double weights = 0;
    double squares = 0;
    for (std::size_t i = 0; i < differences.size(); ++i) {
        if (!differences[i])
            continue;
        Level& level = next.levels[i];
        level.variance += m_movement.drift * std::max(0.0, hours - level.hours) / 24;
        level.hours = hours;
        const double total = level.variance + m_movement.noise;
        const double gap = *differences[i] - level.mean;
        const double gain = level.variance / total;
        level.mean += gain * gap;
        level.variance *= 1 - gain;
        const double weight = fillingWeights[i].weight;
        sum += weight * std::clamp(gap / std::sqrt(total), -fillingLimit, fillingLimit);
        weights += weight;
        squares += weight * weight;
    }
    if (weights > 0) {
        const double surprise = sum / weights / spreadOfMean(weights, squares, differencesAlike);
        next.sums = {std::max(0.0, m_before.sums[0] + surprise - fillingSlack),
                     std::max(0.0, m_before.sums[1] - surprise - fillingSlack)};
    }
    m_now = next;
    return m_now.sums;
}

std::array<double, 2> SidePool::feed(int day, const Surprises& surprises)
{
    if (m_day != day)
        m_before = m_now;
    m_day = day;
    for (std::size_t side = 0; side < 2; ++side) {
        double own = 0;
        double other = 0;
        int ownCount = 0;
        int otherCount = 0;
        for (const auto& symptom : surprises) {
            if (symptom[side]) {
                own += *symptom[side];
                ++ownCount;
            }
            if (symptom[1 - side]) {
                other += *symptom[1 - side];
                ++otherCount;
            }
        }
        if (ownCount == 0) {
            m_now[side] = m_before[side];
            continue;
        }
        const double share = otherCount > 0 ? otherSideShare : 0;
        const double pooled = own / ownCount - (otherCount > 0 ? share * other / otherCount : 0);
        const double spread = spreadOfMean(ownCount, ownCount, symptomsAlike)
                              * std::sqrt(1 + share * share - 2 * share * sidesAlike);
        m_now[side] =
            std::max(0.0, m_before[side] + std::clamp(pooled / spread, -poolLimit, poolLimit) - poolSlack);
    }
    return m_now;
}

}  // namespace ebbline::triggers
