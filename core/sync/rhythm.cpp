#include "core/sync/rhythm.h"

#include "core/mailbox/service.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ebbline::sync {

namespace {

constexpr std::chrono::milliseconds shortest{1'000};

/// What a hub asked for, within bounds, and not the same to the millisecond for all whom it told.
std::chrono::milliseconds asked(std::chrono::seconds retryAfter, double random)
{
    if (retryAfter.count() <= 0)
        return std::chrono::milliseconds(0);
    return std::min<std::chrono::milliseconds>(retryAfter, longestRetryAfter) + std::chrono::milliseconds(static_cast<std::int64_t>(random * 1'000));
}

/// A failure is not followed at once, whatever the dice say.
std::chrono::milliseconds pauseAfter(int failures, double random)
{
    return std::max(shortest, backOff(failures, random));
}

}  // namespace

std::chrono::milliseconds backOff(int failures, double random)
{
    constexpr double first = 2'000;
    constexpr double longest = 15 * 60 * 1'000;
    const double ceiling = std::min(longest, first * std::pow(2.0, std::clamp(failures - 1, 0, 30)));
    return std::chrono::milliseconds{static_cast<std::int64_t>(ceiling * std::clamp(random, 0.0, 1.0))};
}

Rhythm::Rhythm(std::chrono::milliseconds interval) : m_interval(std::max(shortest, interval)) {}

void Rhythm::forgetFailures()
{
    m_failures = m_early = m_idle = 0;
}

Rhythm::Next Rhythm::goOnWaiting(std::chrono::milliseconds pause)
{
    const auto left = std::chrono::floor<std::chrono::seconds>(m_interval - m_waited - pause);
    if (left.count() < 1)
        return {What::run, std::max(std::chrono::milliseconds(0), m_interval - m_waited)};
    m_waited += pause;
    return {What::wait, pause, std::min(left, mailbox::longestWait)};
}

Rhythm::Next Rhythm::afterRun(const Report& report, double random)
{
    const bool called = std::exchange(m_called, false);
    m_waited = std::chrono::milliseconds(0);
    const auto theirs = asked(report.retryAfter, random);
    const bool leaveAlone = theirs.count() > 0;
    if (report.problem && !report.reached)
        return {What::run, std::max(pauseAfter(++m_failures, random), theirs), {}, leaveAlone};
    m_failures = 0;
    if (report.problem && leaveAlone)
        return {What::run, theirs, {}, leaveAlone};
    // What calls again and again and brings nothing is not to keep us asking: a message after a gap, or a hub that lies.
    m_idle = report.envelopesReceived > 0 ? 0 : m_idle + (called ? 1 : 0);
    return goOnWaiting(called && m_idle > 0 ? pauseAfter(m_idle, random) : std::chrono::milliseconds(0));
}

Rhythm::Next Rhythm::afterWait(const Heard& heard, std::chrono::milliseconds took, double random)
{
    m_waited += std::max(std::chrono::milliseconds(0), took);
    if (!heard.news) {
        m_early = 0;
        // No mailbox to wait at, as after a phone was replaced: nothing failed, and there may be one later.
        if (heard.news.error().reason == Reason::notFound)
            return {What::run, std::max(std::chrono::milliseconds(0), m_interval - m_waited)};
        // The run that follows finds out what it is, and is judged by it.
        const auto theirs = asked(heard.retryAfter, random);
        return {What::run, std::max(pauseAfter(1, random), theirs), {}, theirs.count() > 0};
    }
    if (*heard.news) {
        m_early = 0;
        m_called = true;
        return {What::run};
    }
    // A hub that is being stopped, or one that knows no waiting.
    m_early = took < shortest ? m_early + 1 : 0;
    m_idle = m_early > 0 ? m_idle : 0;
    return goOnWaiting(m_early > 0 ? pauseAfter(m_early, random) : std::chrono::milliseconds(0));
}

}  // namespace ebbline::sync
