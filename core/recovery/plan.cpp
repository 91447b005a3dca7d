#include "core/recovery/plan.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <utility>

namespace ebbline::recovery {

namespace {

using Gain = std::int64_t;
constexpr Gain none = std::numeric_limits<Gain>::min();
constexpr int nobody = -1;

double apart(const ChartPoint& a, const ChartPoint& b)
{
    return std::hypot(a.x - b.x, a.y - b.y);
}

bool isOtherThread(const Placement& a, const Placement& b)
{
    return a.material != b.material || a.form != b.form || a.gauge != b.gauge || a.lengthMm != b.lengthMm
           || a.instrument != b.instrument || a.instrumentLengthMm != b.instrumentLengthMm;
}

/// What pairing two spares, in whole millionths of a unit, so that equal ways are equal; the last places hold the other two
/// rules, and 60 pairs of them stay below a hundredth of a unit. Not above 0: they do not belong together.
Gain gainOf(const Placement& planned, std::size_t i, const Placement& done, std::size_t j)
{
    const double distance = apart(planned.entry, done.entry) + apart(planned.end, done.end);
    if (planned.view != done.view || !(distance < strangeUnits))
        return 0;
    constexpr Gain places = 1000;
    constexpr Gain sameThread = 100;
    const Gain between = static_cast<Gain>(i < j ? j - i : i - j);
    return std::llround((strangeUnits - distance) * 1000) * places + (isOtherThread(planned, done) ? 0 : sameThread) - between;
}

/// The pairing with the largest gain in all, grown pair by pair along the best alternating path.
class Pairing {
public:
    Pairing(std::span<const Placement> planned, std::span<const Placement> done)
        : m_width(done.size()), m_gains(planned.size() * done.size()), m_doneOf(planned.size(), nobody), m_plannedOf(done.size(), nobody)
    {
        for (std::size_t i = 0; i < planned.size(); ++i)
            for (std::size_t j = 0; j < done.size(); ++j)
                m_gains[i * m_width + j] = gainOf(planned[i], i, done[j], j);
        while (grow()) {
        }
    }

    int doneOf(std::size_t planned) const { return m_doneOf[planned]; }
    int plannedOf(std::size_t done) const { return m_plannedOf[done]; }

private:
    /// `base`: what the path gained up to the planned thread i.
    bool spread(std::size_t i, Gain base)
    {
        bool better = false;
        for (std::size_t j = 0; j < m_width; ++j) {
            const Gain gain = m_gains[i * m_width + j];
            if (gain > 0 && m_doneOf[i] != static_cast<int>(j) && base + gain > m_best[j]) {
                m_best[j] = base + gain;
                m_from[j] = static_cast<int>(i);
                better = true;
            }
        }
        return better;
    }

    bool grow()
    {
        m_best.assign(m_width, none);
        m_from.assign(m_width, nobody);
        for (std::size_t i = 0; i < m_doneOf.size(); ++i)
            if (m_doneOf[i] == nobody)
                spread(i, 0);
        for (bool better = true; better;) {
            better = false;
            for (std::size_t j = 0; j < m_width; ++j)
                if (m_plannedOf[j] != nobody && m_best[j] != none) {
                    const auto i = static_cast<std::size_t>(m_plannedOf[j]);
                    better = spread(i, m_best[j] - m_gains[i * m_width + j]) || better;
                }
        }
        int last = nobody;
        for (std::size_t j = 0; j < m_width; ++j)
            if (m_plannedOf[j] == nobody && m_best[j] > 0 && (last == nobody || m_best[j] > m_best[static_cast<std::size_t>(last)]))
                last = static_cast<int>(j);
        const bool grown = last != nobody;
        while (last != nobody) {
            const int i = m_from[static_cast<std::size_t>(last)];
            m_plannedOf[static_cast<std::size_t>(last)] = i;
            last = std::exchange(m_doneOf[static_cast<std::size_t>(i)], last);
        }
        return grown;
    }

    std::size_t m_width;
    std::vector<Gain> m_gains;
    std::vector<int> m_doneOf;
    std::vector<int> m_plannedOf;
    std::vector<Gain> m_best;  ///< of a path from a planned thread without a partner to this one
    std::vector<int> m_from;
};

}  // namespace

bool PlanComparison::isAsPlanned() const
{
    return leftOut.empty() && added.empty()
           && std::ranges::none_of(matches, [](const PlanMatch& match) { return match.moved || match.otherwise; });
}

PlanComparison compareWithPlan(std::span<const Placement> planned, std::span<const Placement> done)
{
    const Pairing pairing(planned, done);
    PlanComparison comparison;
    for (std::size_t i = 0; i < planned.size(); ++i) {
        const int number = static_cast<int>(i) + 1;
        if (pairing.doneOf(i) == nobody) {
            comparison.leftOut.push_back(number);
            continue;
        }
        const Placement& a = planned[i];
        const Placement& b = done[static_cast<std::size_t>(pairing.doneOf(i))];
        const bool moved = apart(a.entry, b.entry) > movedUnits || apart(a.end, b.end) > movedUnits;
        const bool placedOtherwise = a.side != b.side || a.zone != b.zone || a.ending != b.ending;
        comparison.matches.push_back({number, pairing.doneOf(i) + 1, moved, isOtherThread(a, b) || (!moved && placedOtherwise)});
    }
    for (std::size_t j = 0; j < done.size(); ++j)
        if (pairing.plannedOf(j) == nobody)
            comparison.added.push_back(static_cast<int>(j) + 1);
    return comparison;
}

std::vector<Placement> plannedOf(std::span<const Placement> plan)
{
    std::vector<Placement> planned;
    for (const Placement& one : plan)
        if (const Placement thread = asPlanned(one); check(thread))
            planned.push_back(thread);
    return planned;
}

}  // namespace ebbline::recovery
