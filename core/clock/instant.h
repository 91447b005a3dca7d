#pragma once
/// \file
/// Points in time, three kinds that never mix by accident:
/// Instant (UTC, milliseconds), Moment (an Instant as somebody's wall clock showed it) and
/// LocalDay (a calendar day on that wall clock).

#include <chrono>
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

/// Where "now" comes from. Nothing in core reads the time in any other way.
class Clock {
public:
    virtual ~Clock() = default;
    virtual Instant now() const = 0;
};

/// The machine's clock.
class SystemClock final : public Clock {
public:
    Instant now() const override
    {
        return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
    }
};

/// A clock that stands still until told: tests, the story, the simulator.
class ManualClock final : public Clock {
public:
    explicit ManualClock(Instant start) : m_now(start) {}
    Instant now() const override { return m_now; }
    void set(Instant now) { m_now = now; }
    void advance(std::chrono::milliseconds by) { m_now += by; }

private:
    Instant m_now;
};

}  // namespace ebbline::clock
