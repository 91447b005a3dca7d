#include "core/triggers/side_watch.h"

namespace ebbline::triggers {

namespace {

// Design constants; what each is for and how it was chosen: docs/statistics/triggers.md.
constexpr double sideWeight = 0.3;

/// How far the sides of an ordinary course lie apart, points, by their mean level (an assumption).
double usualSideSpread(double meanLevel)
{
    return 0.5 + 0.2 * meanLevel;
}

const std::array<std::optional<int>, 2>& bothOf(const SideScores& scores, recovery::Symptom symptom)
{
    return scores[static_cast<std::size_t>(symptom) - 1];
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

SideReadings differencesOf(const SideScores& scores)
{
    SideReadings differences{};
    for (std::size_t i = 0; i < sideSymptoms.size(); ++i) {
        const auto& [left, right] = bothOf(scores, sideSymptoms[i]);
        if (left && right)
            differences[i] = bands::evenScale(*left) - bands::evenScale(*right);
    }
    return differences;
}

SideReadings sumsOf(const SideScores& scores, const bands::Band& band, int day)
{
    SideReadings sums{};
    for (std::size_t i = 0; i < sideSymptoms.size(); ++i) {
        const auto& [left, right] = bothOf(scores, sideSymptoms[i]);
        if (left && right)
            sums[i] = bands::evenScale(*left) + bands::evenScale(*right) - 2 * band.expected(sideSymptoms[i], day);
    }
    return sums;
}

}  // namespace ebbline::triggers
