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

void OneSideWatch::start(const SideReadings& differences)
{
    if (std::ranges::any_of(differences, [](const auto& reading) { return reading.has_value(); }))
        take(0, differences, {});
}

void OneSideWatch::feed(double hours, const SideReadings& differences, const SideReadings& sums)
{
    if (!m_fed || hours - m_now.hours >= sameStateHours)
        m_before = m_now;
    else
        m_now = m_before;
    m_fed = true;
    take(hours, differences, sums);
}

void OneSideWatch::take(double hours, const SideReadings& differences, const SideReadings& sums)
{
    begin(m_now);
    m_now.hours = hours;
    grow(m_now);
    Gain ofDifferences, ofSums;
    for (std::size_t i = 0; i < sideSymptoms.size(); ++i) {
        if (differences[i])
            read(m_now, i, *differences[i], ofDifferences);
        if (sums[i])
            read(m_now, sideSymptoms.size() + i, *sums[i], ofSums);
    }
}

/// It may have begun since the reading before.
void OneSideWatch::begin(State& next) const
{
    Beginnings& beginnings = next.beginnings;
    const std::size_t place = next.begun % mostBeginnings;
    beginnings.hours[place] = next.hours;
    beginnings.unrest[place] = std::max(1.0, (usualReadings + next.squares) / (usualReadings + next.surprises));
    beginnings.apart[place] = beginnings.together[place] = beginnings.strength[place] = 0;
    for (Each& absorbed : beginnings.absorbed)
        absorbed[place] = 0;
    ++next.begun;
}

void OneSideWatch::grow(State& next) const
{
    for (std::size_t b = 0; b < mostBeginnings; ++b)
        next.beginnings.size[b] =
            m_signature.growHours > 0 ? std::min(next.hours - next.beginnings.hours[b], m_signature.growHours) / 24 : 1;
}

void OneSideWatch::read(State& next, std::size_t channel, double value, Gain& known) const
{
    const bool difference = channel < sideSymptoms.size();
    const bands::Movement& movement = difference ? m_movements.sides : m_movements.sums;
    Level& level = next.levels[channel];
    level.variance += movement.drift * std::max(0.0, next.hours - level.hours) / 24;
    level.hours = next.hours;
    if (level.variance != known.before) {
        const double total = level.variance + movement.noise;
        known.before = level.variance;
        known.precision = 1 / std::sqrt(total);
        known.gain = level.variance / total;
        known.after = level.variance * (1 - known.gain);
    }
    const double precision = known.precision, gain = known.gain;
    const double gap = value - level.mean;
    level.mean += gain * gap;
    level.variance = known.after;
    const double surprise = std::clamp(gap * precision, -surpriseLimit, surpriseLimit);
    if (difference) {
        next.squares += std::min(mostSquare, surprise * surprise);
        ++next.surprises;
    }
    const double weight = m_signature.weights[channel % sideSymptoms.size()];
    if (weight == 0)
        return;  // it shows nothing of what is looked for, and absorbs nothing
    // Places where nothing has begun yet are reckoned as well, and never read. Copies, so that the compiler sees that
    // they do not overlap, and takes several at once.
    Beginnings& beginnings = next.beginnings;
    Each& kept = difference ? beginnings.apart : beginnings.together;
    Each agreement = kept, strength = beginnings.strength, absorbed = beginnings.absorbed[channel];
    const Each size = beginnings.size;
    const double share = difference ? 1 : sumShare;
    for (std::size_t b = 0; b < mostBeginnings; ++b) {
        const double ahead = weight * size[b] - absorbed[b];
        const double seen = ahead * precision;
        agreement[b] += share * seen * surprise;
        strength[b] += share * seen * seen;
        absorbed[b] += gain * ahead;
    }
    kept = agreement;
    beginnings.strength = strength;
    beginnings.absorbed[channel] = absorbed;
}

double OneSideWatch::ratio(std::size_t side) const
{
    const Beginnings& beginnings = m_now.beginnings;
    double best = 0;
    const std::size_t count = std::min(m_now.begun, mostBeginnings);
    for (std::size_t b = 0; b < count; ++b) {
        const double strength = beginnings.strength[b];
        const double agreement = beginnings.together[b] + (side == 0 ? beginnings.apart[b] : -beginnings.apart[b]);
        if (strength <= 0 || agreement <= 0)
            continue;
        const double size = std::clamp(agreement / strength, m_signature.least, m_signature.most);
        best = std::max(best, size * (agreement - size * strength / 2) / beginnings.unrest[b]);
    }
    return best;
}

}  // namespace ebbline::triggers
