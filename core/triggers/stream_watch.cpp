#include "core/triggers/stream_watch.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace ebbline::triggers {

namespace {

constexpr double levelWeight = 0.4;
constexpr double reboundSlack = 0.5;
constexpr double innovationLimit = 3;
constexpr int reboundStartDay = 2;

/// Variances of the level of z, by maximum likelihood over a simulated cohort; assumptions until
/// a clinic's own courses replace them (docs/statistics/triggers.md).
constexpr statistics::LocalLevelModel levelOfZ{.observation = 0.30, .drift = 0.02, .startMean = 0, .startVariance = 0.40};

statistics::LocalLevelFilter freshFilter()
{
    auto filter = statistics::LocalLevelFilter::create(levelOfZ);
    if (!filter)
        std::abort();  // the model is a constant of this program
    return *filter;
}

}  // namespace

StreamWatch::StreamWatch(recovery::Symptom symptom, const Protocol& protocol)
    : m_symptom(symptom), m_protocol(protocol), m_before{-1, 0, 0, freshFilter()}
{
}

StreamWatch::State StreamWatch::advanced(int day, double z) const
{
    State next = m_before;
    next.filter.advance(std::max(0, day - std::max(0, m_before.day)));
    const double innovation =
        std::clamp(next.filter.observe(z).value_or(0.0), -innovationLimit, innovationLimit);
    next.level += levelWeight * (z - next.level);
    if (day >= reboundStartDay)
        next.rebound = std::max(0.0, next.rebound + innovation - reboundSlack);
    next.day = day;
    return next;
}

StreamReading StreamWatch::feed(int day, int points)
{
    if (m_today && m_today->first != day) {
        m_before = advanced(m_today->first, m_protocol.band.z(m_symptom, m_today->first, m_today->second));
        m_days.push_back(*m_today);
    }
    m_today = {day, points};

    StreamReading reading;
    reading.day = day;
    reading.points = points;
    reading.z = m_protocol.band.z(m_symptom, day, points);
    const State now = advanced(day, reading.z);
    reading.level = now.level;
    reading.rebound = now.rebound;
    reading.observedDays = static_cast<int>(m_days.size()) + 1;
    reading.peak = points;
    double sumZ = reading.z;
    double sumPoints = points;
    int counted = 1;
    for (auto past = m_days.rbegin(); past != m_days.rend(); ++past) {
        const auto [pastDay, pastPoints] = *past;
        reading.lowest = std::min(reading.lowest, pastPoints);
        reading.peak = std::max(reading.peak, pastPoints);
        if (counted < 3) {
            sumZ += m_protocol.band.z(m_symptom, pastDay, pastPoints);
            sumPoints += pastPoints;
            ++counted;
        }
        if (day - pastDay >= 6 && day - pastDay <= 8 && !reading.aWeekBefore)
            reading.aWeekBefore = pastPoints;
    }
    reading.lastThree = sumPoints / counted;
    if (day >= m_protocol.thresholds.slowFirstDay && counted == 3)
        reading.slow = sumZ / 3;
    // Two days in a row that did not rise and ended below where they began.
    for (std::size_t i = 2; i < m_days.size() && !reading.declinedTwoDays; ++i)
        reading.declinedTwoDays = m_days[i].second < m_days[i - 2].second && m_days[i].second <= m_days[i - 1].second
                                  && m_days[i - 1].second <= m_days[i - 2].second;
    return reading;
}

}  // namespace ebbline::triggers
