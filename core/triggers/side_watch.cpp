#include "core/triggers/side_watch.h"

namespace ebbline::triggers {

namespace {

// Design constants; what each is for and how it was chosen: docs/statistics/triggers.md.
constexpr double sideWeight = 0.3;

/// How far the sides of an ordinary course lie apart, points, by their mean level (an assumption).
constexpr double usualSideSpread(double meanLevel)
{
    return 0.5 + 0.2 * meanLevel;
}

/// left - right in usual spreads, for each pair of scores.
constexpr auto spreadsApart = [] {
    std::array<std::array<double, 11>, 11> table{};
    for (int left = 0; left <= 10; ++left)
        for (int right = 0; right <= 10; ++right)
            table[static_cast<std::size_t>(left)][static_cast<std::size_t>(right)] =
                (left - right) / usualSideSpread((left + right) / 2.0);
    return table;
}();

double apartBy(int left, int right)
{
    return spreadsApart[static_cast<std::size_t>(left)][static_cast<std::size_t>(right)];
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
    m_now = m_before + sideWeight * (apartBy(left, right) - m_before);
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
