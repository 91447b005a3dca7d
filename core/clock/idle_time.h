#pragma once
/// \file
/// How long nobody has used a program that holds keys, and what follows from it.

#include "core/clock/instant.h"

namespace ebbline::clock {

class IdleTime {
public:
    /// It is said so long before the end. WCAG 2.2 (W3C Recommendation, 2023), 2.2.1 Timing Adjustable, asks for
    /// 20 s at least in which a simple act gives more time, ten times or more; here as often as one likes.
    static constexpr std::chrono::seconds warningTime{30};

    enum class State : std::uint8_t {
        inUse,   ///< nothing to say
        ending,  ///< the last warningTime before the limit
        over,    ///< the limit is reached; only begin() ends this
    };

    /// The clock outlives it. \param limit  longer than warningTime
    IdleTime(const Clock& clock, std::chrono::minutes limit);

    void setLimit(std::chrono::minutes limit) { m_limit = limit; }
    /// Counts from this moment on.
    void begin() { m_last = m_clock.readings(); }
    /// Somebody did something. Does nothing once it is over: a touch that comes too late brings nothing back.
    void used();
    State state() const;
    /// Until the state changes if nobody does anything; zero once it is over.
    std::chrono::milliseconds untilChange() const;

private:
    /// By the clock that moved further: one may stand still while the machine sleeps, the other may be turned back.
    std::chrono::milliseconds idle() const;

    const Clock& m_clock;
    std::chrono::milliseconds m_limit;
    Readings m_last;
};

}  // namespace ebbline::clock
