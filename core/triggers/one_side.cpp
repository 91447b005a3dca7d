#include "core/triggers/one_side.h"

#include <algorithm>
#include <cmath>

namespace ebbline::triggers {

namespace {

// Design constants; what each is for and how it was chosen: docs/statistics/triggers.md.
constexpr double sameStateHours = 3;
constexpr double surpriseLimit = 3.5;
constexpr double sumShare = 0.6;      // of what the sums say: they move together, differences do not
constexpr double usualReadings = 12;  // surprises that the usual unrest stands for
constexpr double mostSquare = 9;

}  // namespace

OneSideWatch::OneSideWatch(const bands::Movements& movements, const Signature& signature)
    : m_movements(movements), m_signature(signature)
{
    for (std::size_t channel = 0; channel < channels; ++channel)
        m_before.levels[channel].variance =
            channel < sideSymptoms.size() ? movements.sides.start : movements.sums.start;
    m_now = m_before;
}

std::array<double, 2> OneSideWatch::feed(double hours, const SideReadings& differences, const SideReadings& sums)
{
    if (!m_fed || hours - m_now.hours >= sameStateHours)
        m_before = m_now;
    else
        m_now = m_before;
    m_fed = true;
    begin(m_now);
    m_now.hours = hours;
    grow(m_now);
    for (std::size_t i = 0; i < sideSymptoms.size(); ++i) {
        if (differences[i])
            read(m_now, i, *differences[i]);
        if (sums[i])
            read(m_now, sideSymptoms.size() + i, *sums[i]);
    }
    return ratios();
}

/// It may have begun since the reading before.
void OneSideWatch::begin(State& next) const
{
    Beginning& beginning = next.beginnings[next.begun % mostBeginnings];
    beginning = {.hours = next.hours,
                 .unrest = std::max(1.0, (usualReadings + next.squares) / (usualReadings + next.surprises))};
    ++next.begun;
}

void OneSideWatch::grow(State& next) const
{
    for (Beginning& beginning : next.beginnings)
        beginning.size =
            m_signature.growHours > 0 ? std::min(next.hours - beginning.hours, m_signature.growHours) / 24 : 1;
}

void OneSideWatch::read(State& next, std::size_t channel, double value) const
{
    const bool difference = channel < sideSymptoms.size();
    const bands::Movement& movement = difference ? m_movements.sides : m_movements.sums;
    Level& level = next.levels[channel];
    level.variance += movement.drift * std::max(0.0, next.hours - level.hours) / 24;
    level.hours = next.hours;
    const double total = level.variance + movement.noise;
    const double precision = 1 / std::sqrt(total);
    const double gap = value - level.mean;
    const double gain = level.variance / total;
    level.mean += gain * gap;
    level.variance *= 1 - gain;
    const double surprise = std::clamp(gap * precision, -surpriseLimit, surpriseLimit);
    if (difference) {
        next.squares += std::min(mostSquare, surprise * surprise);
        ++next.surprises;
    }
    const double weight = m_signature.weights[channel % sideSymptoms.size()];
    const std::size_t count = std::min(next.begun, mostBeginnings);
    for (std::size_t b = 0; b < count; ++b) {
        Beginning& beginning = next.beginnings[b];
        const double ahead = weight * beginning.size - beginning.absorbed[channel];
        const double seen = ahead * precision;
        if (difference) {
            beginning.apart += seen * surprise;
            beginning.strength += seen * seen;
        } else {
            beginning.together += sumShare * seen * surprise;
            beginning.strength += sumShare * seen * seen;
        }
        beginning.absorbed[channel] += gain * ahead;
    }
}

std::array<double, 2> OneSideWatch::ratios() const
{
    std::array<double, 2> best{};
    const std::size_t count = std::min(m_now.begun, mostBeginnings);
    for (std::size_t b = 0; b < count; ++b) {
        const Beginning& beginning = m_now.beginnings[b];
        if (beginning.strength <= 0)
            continue;
        for (std::size_t side = 0; side < 2; ++side) {
            const double agreement = beginning.together + (side == 0 ? beginning.apart : -beginning.apart);
            if (agreement <= 0)
                continue;
            const double size = std::clamp(agreement / beginning.strength, m_signature.least, m_signature.most);
            best[side] = std::max(best[side],
                                  size * (agreement - size * beginning.strength / 2) / beginning.unrest);
        }
    }
    return best;
}

}  // namespace ebbline::triggers
