#include "core/triggers/side_watch.h"

#include "core/recovery/symptom.h"

#include <algorithm>
#include <cmath>

namespace ebbline::triggers {

namespace {

using recovery::Symptom;

// Design constants; what each is for and how it was chosen: docs/statistics/triggers.md.
constexpr double sideWeight = 0.3;
constexpr double fillingSlack = 1.5;
constexpr double fillingLimit = 5;
constexpr double sameStateHours = 3;
constexpr double poolSlack = 0.8;
constexpr double poolLimit = 3;
constexpr double otherSideShare = 0.4;
constexpr double symptomsAlike = 0.5;     // correlation of the surprises of one side
constexpr double sidesAlike = 0.5;        // correlation between the sides
constexpr double differencesAlike = 0.3;  // correlation of the differences between symptoms

struct Weight {
    Symptom symptom;
    double weight;
};
/// Blood shows as swelling and pain at once, as tightness less, as a bruise later.
constexpr std::array<Weight, 4> fillingWeights{
    {{Symptom::swelling, 1.0}, {Symptom::pain, 1.0}, {Symptom::tightness, 0.7}, {Symptom::bruising, 0.5}}};

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

std::optional<double> pooledDifference(const SideScores& scores)
{
    // The logarithm makes a difference of points count alike at low and at high levels.
    const auto scaled = [](int points) { return 3 * std::log(3.0 + points); };
    double sum = 0;
    double weights = 0;
    double squares = 0;
    for (const auto& [symptom, weight] : fillingWeights) {
        const auto& [left, right] = scores[static_cast<std::size_t>(symptom) - 1];
        if (!left || !right)
            continue;
        sum += weight * (scaled(*left) - scaled(*right));
        weights += weight;
        squares += weight * weight;
    }
    if (weights == 0)
        return std::nullopt;
    return sum / weights / spreadOfMean(weights, squares, differencesAlike);
}

FillingWatch::FillingWatch(const bands::Movement& movement) : m_movement(movement)
{
    m_before.variance = movement.start;
    m_now = m_before;
}

std::array<double, 2> FillingWatch::feed(double hours, double difference)
{
    if (!m_fed || hours - m_now.hours >= sameStateHours)
        m_before = m_now;
    m_fed = true;
    State next = m_before;
    next.variance += m_movement.drift * std::max(0.0, hours - m_before.hours) / 24;
    const double total = next.variance + m_movement.noise;
    const double gap = difference - next.mean;
    const double gain = next.variance / total;
    next.mean += gain * gap;
    next.variance *= 1 - gain;
    const double surprise = std::clamp(gap / std::sqrt(total), -fillingLimit, fillingLimit);
    next.sums = {std::max(0.0, m_before.sums[0] + surprise - fillingSlack),
                 std::max(0.0, m_before.sums[1] - surprise - fillingSlack)};
    next.hours = hours;
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
