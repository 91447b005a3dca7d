#include "core/clock/idle_time.h"

namespace ebbline::clock {

using std::chrono::milliseconds;

IdleTime::IdleTime(const Clock& clock, std::chrono::minutes limit) : m_clock(clock), m_limit(limit), m_last(clock.readings())
{
}

milliseconds IdleTime::idle() const
{
    const Readings now = m_clock.readings();
    // Another run of the machine has another count: whatever it says, that touch is long ago.
    const milliseconds up = now.uptime.run == m_last.uptime.run ? now.uptime.elapsed - m_last.uptime.elapsed : m_limit;
    return std::max({now.wall - m_last.wall, up, milliseconds{0}});
}

void IdleTime::used()
{
    if (state() != State::over)
        begin();
}

IdleTime::State IdleTime::state() const
{
    const milliseconds passed = idle();
    if (passed >= m_limit)
        return State::over;
    return passed >= m_limit - warningTime ? State::ending : State::inUse;
}

milliseconds IdleTime::untilChange() const
{
    const milliseconds left = m_limit - idle();
    const milliseconds calm = left - warningTime;
    return calm > milliseconds{0} ? calm : std::max(left, milliseconds{0});
}

}  // namespace ebbline::clock
