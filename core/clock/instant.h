#pragma once
/// \file
/// Points in time, three kinds that never mix by accident:
/// Instant (UTC, milliseconds), Moment (an Instant as somebody's wall clock showed it) and
/// LocalDay (a calendar day on that wall clock).

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdint>
#include <string>

namespace ebbline::clock {

/// UTC, milliseconds since 1970-01-01T00:00:00Z.
using Instant = std::chrono::sys_time<std::chrono::milliseconds>;

/// A calendar day where the person was, without a time zone.
using LocalDay = std::chrono::local_days;

/// A wall-clock time as it was shown when something happened: kept for ever as entered, so
/// that travelling or a rule change never moves an entry to another day.
struct Moment {
    Instant at{};
    std::chrono::minutes offset{0};  ///< local minus UTC, -14 h .. +14 h
    std::string zone;                ///< IANA name, or empty if unknown

    bool operator==(const Moment&) const = default;

    /// The local calendar day.
    LocalDay day() const
    {
        return std::chrono::floor<std::chrono::days>(
            std::chrono::local_time<std::chrono::milliseconds>(at.time_since_epoch() + offset));
    }

    /// Minutes after local midnight, 0..1439.
    int minuteOfDay() const
    {
        const auto local =
            std::chrono::local_time<std::chrono::milliseconds>(at.time_since_epoch() + offset);
        return static_cast<int>(
            std::chrono::floor<std::chrono::minutes>(local - std::chrono::floor<std::chrono::days>(local))
                .count());
    }
};

/// Day of recovery: 0 on the local calendar day of the treatment, negative before it.
inline int dayOfRecovery(const Moment& treated, const Moment& entered)
{
    return static_cast<int>((entered.day() - treated.day()).count());
}

/// A count that only goes forward, and the name of the run that it counts in. Nobody can set it,
/// so a wait measured by it cannot be shortened by setting the wall clock.
struct Uptime {
    std::array<std::uint8_t, 16> run{};    ///< random; differs for each run
    std::chrono::milliseconds elapsed{0};  ///< since the run began, time asleep included
    /// True: a run is one boot of the machine, so whatever happened in another run happened before
    /// this one began. False: a run is one start of the program, and says nothing about others.
    bool wholeBoot = false;
};

/// Both clocks, read together.
struct Readings {
    Instant wall{};
    Uptime uptime;
};

/// Where the time comes from. Nothing in core reads it in any other way.
class Clock {
public:
    virtual ~Clock() = default;
    virtual Instant now() const = 0;
    virtual Uptime uptime() const = 0;
    Readings readings() const { return {now(), uptime()}; }
};

/// The machine's clocks: the wall clock, and the time since boot where the machine names its boot
/// (Linux); elsewhere the time since this object was made.
class SystemClock final : public Clock {
public:
    SystemClock();
    Instant now() const override;
    Uptime uptime() const override;

private:
    std::array<std::uint8_t, 16> m_run{};
    bool m_wholeBoot = false;
    std::chrono::milliseconds m_began{0};
};

/// A clock that stands still until told: tests, the story, the simulator.
class ManualClock final : public Clock {
public:
    explicit ManualClock(Instant start) : m_now(start) { m_uptime.wholeBoot = true; }
    Instant now() const override { return m_now; }
    Uptime uptime() const override { return m_uptime; }

    /// Time passes until `now`; a moment before the present one only turns the wall clock back.
    void set(Instant now)
    {
        m_uptime.elapsed += std::max(now - m_now, std::chrono::milliseconds{0});
        m_now = now;
    }
    void advance(std::chrono::milliseconds by) { set(m_now + by); }
    /// Somebody sets the wall clock; no time passes.
    void turnWall(Instant now) { m_now = now; }
    /// The machine starts again, or only the program where `wholeBoot` is false; no time passes.
    void restart(bool wholeBoot = true)
    {
        m_uptime = {.run = m_uptime.run, .elapsed = {}, .wholeBoot = wholeBoot};
        m_uptime.run[0] = static_cast<std::uint8_t>(m_uptime.run[0] + 1);
    }

private:
    Instant m_now;
    Uptime m_uptime;
};

}  // namespace ebbline::clock
