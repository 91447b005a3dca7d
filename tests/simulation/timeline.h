#pragma once
/// \file
/// Simulated time: what happens when, the clocks that see it wrongly, and a trace of it all.

#include "core/bytes/text.h"
#include "core/clock/instant.h"
#include "core/crypto/crypto.h"

#include <functional>
#include <map>
#include <string>

namespace ebbline::simulation {

/// One thread, one time, events in the order of (time, order of booking).
class Timeline {
public:
    explicit Timeline(clock::Instant start) : m_clock(start) {}

    void at(clock::Instant when, std::function<void()> what)
    {
        m_events.emplace(std::pair{std::max(when, m_clock.now()), m_order++}, std::move(what));
    }
    void in(std::chrono::milliseconds delay, std::function<void()> what) { at(now() + delay, std::move(what)); }
    clock::Instant now() const { return m_clock.now(); }
    const clock::ManualClock& clock() const { return m_clock; }
    bool idle() const { return m_events.empty(); }

    /// Runs the next event. \returns false if there is none.
    bool step()
    {
        if (m_events.empty())
            return false;
        const auto next = m_events.begin();
        m_clock.set(next->first.first);
        const auto what = std::move(next->second);
        m_events.erase(next);
        what();
        return true;
    }
    /// Time passes with nothing in it. \pre idle()
    void pass(std::chrono::milliseconds time) { m_clock.advance(time); }

private:
    clock::ManualClock m_clock;
    std::map<std::pair<clock::Instant, std::uint64_t>, std::function<void()>> m_events;
    std::uint64_t m_order = 0;
};

/// A device's own idea of the time: off by hours, set by somebody at any moment.
class SkewedClock final : public clock::Clock {
public:
    explicit SkewedClock(const clock::Clock& real) : m_real(real) {}
    clock::Instant now() const override { return m_real.now() + m_skew; }
    clock::Uptime uptime() const override { return m_real.uptime(); }
    void set(std::chrono::milliseconds skew) { m_skew = skew; }
    std::chrono::milliseconds skew() const { return m_skew; }

private:
    const clock::Clock& m_real;
    std::chrono::milliseconds m_skew{0};
};

/// Everything that happened, as one hash; each line can be shown as well.
class Trace {
public:
    explicit Trace(std::function<void(const std::string&)> show = {}) : m_show(std::move(show)) {}
    void line(clock::Instant at, const std::string& text)
    {
        const std::string full = std::to_string(at.time_since_epoch().count()) + ' ' + text + '\n';
        m_hash.add(bytes::viewOf(full));
        ++m_lines;
        if (m_show)
            m_show(full);
    }
    std::size_t lines() const { return m_lines; }
    std::string take() { return bytes::toHex(m_hash.take()); }

private:
    crypto::Hash256 m_hash;
    std::size_t m_lines = 0;
    std::function<void(const std::string&)> m_show;
};

}  // namespace ebbline::simulation
