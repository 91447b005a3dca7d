#include "core/triggers/stream_watch.h"

#include <algorithm>
#include <cmath>

namespace ebbline::triggers {

namespace {

constexpr double reboundSlack = 0.5;
constexpr double surpriseLimit = 3;
constexpr int reboundStartDay = 2;
constexpr int lastEarlyDay = 4;

}  // namespace

StreamWatch::StreamWatch(recovery::Symptom symptom, const bands::Band& band) : m_symptom(symptom), m_band(&band)
{
    m_before.variance = band.movement(symptom).start;
}

void StreamWatch::start(int points)
{
    m_beginningSum = points;
    m_beginningCount = 1;
    readBeginning();
}

/// It changes in the first days only.
void StreamWatch::readBeginning()
{
    if (m_beginningCount > 0)
        m_reading.beginning = static_cast<double>(m_beginningSum) / m_beginningCount;
}

void StreamWatch::advance(StreamGain& known)
{
    const bands::Movement& movement = m_band->movement(m_symptom);
    const double variance = m_before.variance + movement.drift * std::max(0, m_today.day - m_before.day);
    if (variance != known.before) {
        const double precision = 1 / (variance + movement.noise);
        known.before = variance;
        known.root = std::sqrt(precision);
        known.gain = variance * precision;
        known.after = variance * (1 - known.gain);
    }
    const double gap = m_today.z - m_before.mean;
    const double surprise = std::clamp(gap * known.root, -surpriseLimit, surpriseLimit);
    m_now.mean = m_before.mean + known.gain * gap;
    m_now.variance = known.after;
    m_now.rebound = m_today.day >= reboundStartDay ? std::max(0.0, m_before.rebound + surprise - reboundSlack)
                                                   : m_before.rebound;
    m_now.day = m_today.day;
    m_reading.surprise = surprise;
}

void StreamWatch::finishDay()
{
    m_before = m_now;
    // Two days in a row that did not rise and ended below where they began.
    if (m_finished >= 2)
        m_declined = m_declined
                     || (m_today.points < m_lastTwo[1].points && m_today.points <= m_lastTwo[0].points
                         && m_lastTwo[0].points <= m_lastTwo[1].points);
    if (m_today.points <= m_lowest)
        m_cameDown = m_finishedPeak > m_today.points;
    m_lowest = std::min(m_lowest, m_today.points);
    m_finishedPeak = m_peak;
    m_lastTwo = {m_today, m_lastTwo[0]};
    m_recent[static_cast<std::size_t>(m_today.day) % m_recent.size()] = m_today;
    ++m_finished;
    if (m_today.day > lastEarlyDay)
        return;
    m_beginningSum += m_today.points;
    ++m_beginningCount;
    if (m_today.day >= 1) {
        m_earlySum += m_today.z;
        ++m_earlyDays;
    }
    readBeginning();
}

const StreamReading& StreamWatch::feed(int day, int points, StreamGain& known)
{
    if (m_today.day >= 0 && m_today.day != day)
        finishDay();
    m_today = {day, points, m_band->z(m_symptom, day, points)};
    m_peak = std::max(m_peak, points);

    StreamReading& reading = m_reading;
    advance(known);
    reading.day = day;
    reading.points = points;
    reading.z = m_today.z;
    reading.level = m_now.mean;
    reading.rebound = m_now.rebound;
    reading.observedDays = m_finished + 1;
    reading.lowest = m_lowest;
    reading.cameDown = m_cameDown;
    reading.peak = m_peak;
    reading.declinedTwoDays = m_declined;
    const int counted = std::min(m_finished, 2);
    double sumZ = m_today.z;
    int sumPoints = points;
    for (int i = 0; i < counted; ++i) {
        sumZ += m_lastTwo[static_cast<std::size_t>(i)].z;
        sumPoints += m_lastTwo[static_cast<std::size_t>(i)].points;
    }
    reading.lastTwoLowest = m_finished > 0 ? std::min(points, m_lastTwo[0].points) : points;
    // Today counts at once: a stream may be looked at long after its last entry.
    if (day >= 1 && day <= lastEarlyDay)
        reading.early = (m_earlySum + m_today.z) / (m_earlyDays + 1);
    reading.sumOfThreeZ = sumZ;
    reading.lastThreeSum = sumPoints;
    reading.lastThreeDays = counted + 1;
    return m_reading;
}

std::optional<int> StreamWatch::aWeekBefore() const
{
    const int day = m_reading.day;
    for (int back = 6; back <= 8 && back <= day; ++back) {
        const Day& past = m_recent[static_cast<std::size_t>(day - back) % m_recent.size()];
        if (past.day == day - back)
            return past.points;
    }
    return std::nullopt;
}

}  // namespace ebbline::triggers
