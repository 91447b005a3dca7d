#pragma once
/// \file
/// Phone systems as far as bells go, imagined from what their kinds are known to do: one that refuses
/// more than its cap, one that silently keeps the soonest, one that forgets at a reboot, one that rings
/// late to save power. No device is behind the numbers; they are worse than any we heard of.

#include "core/aftercare/booking.h"

#include <algorithm>

namespace ebbline::test {

struct SystemKind {
    const char* name;
    std::size_t capacity;       ///< what it says
    std::size_t keeps;          ///< what it really keeps, soonest first
    bool refusesOverCapacity;
    bool forgetsAtReboot;
    std::chrono::minutes lateBy;
};

inline constexpr SystemKind plainPhone{"plain", 500, 500, true, false, std::chrono::minutes(0)};
inline constexpr SystemKind cappedPhone{"capped", 64, 64, false, false, std::chrono::minutes(0)};
inline constexpr SystemKind forgetfulPhone{"forgets at reboot", 500, 500, true, true, std::chrono::minutes(0)};
inline constexpr SystemKind sleepyPhone{"sleepy", 500, 500, true, true, std::chrono::minutes(9)};
inline constexpr SystemKind tinyPhone{"tiny", 8, 8, true, false, std::chrono::minutes(0)};
inline constexpr SystemKind lyingPhone{"says 64, keeps 10", 64, 10, false, false, std::chrono::minutes(0)};

class PhoneSystem final : public aftercare::PhoneBells {
public:
    PhoneSystem(const SystemKind& kind, clock::Instant now) : m_kind(kind), m_now(now) {}

    aftercare::Leave leave() const override { return m_leave; }
    void setLeave(aftercare::Leave leave) { m_leave = leave; }
    std::size_t capacity() const override { return m_kind.capacity; }
    Result<std::vector<aftercare::Booking>> pending() const override { return m_pending; }
    Done book(const aftercare::Booking& booking) override
    {
        m_mostHeld = std::max(m_mostHeld, m_pending.size() + 1);
        if (m_kind.refusesOverCapacity && m_pending.size() >= m_kind.capacity)
            return fail(Reason::tooLarge, "phone: too many");
        m_pending.insert(std::upper_bound(m_pending.begin(), m_pending.end(), booking), booking);
        if (m_pending.size() > m_kind.keeps)
            m_pending.resize(m_kind.keeps);
        return {};
    }
    Done cancel(const aftercare::Booking& booking) override
    {
        std::erase(m_pending, booking);
        return {};
    }

    struct Rung {
        aftercare::Booking booking;
        clock::Instant at;
    };
    /// Time passes; what comes due rings if the person allows it.
    void goTo(clock::Instant now)
    {
        for (const aftercare::Booking& booking : std::vector(m_pending))
            if (booking.at + m_kind.lateBy <= now) {
                if (m_on && m_leave == aftercare::Leave::granted)
                    m_rung.push_back({booking, std::max(booking.at + m_kind.lateBy, m_now)});
                std::erase(m_pending, booking);
            }
        m_now = now;
    }
    void switchOff() { m_on = false; }
    void switchOn()
    {
        m_on = true;
        if (m_kind.forgetsAtReboot)
            m_pending.clear();
    }
    bool isOn() const { return m_on; }
    const std::vector<Rung>& rung() const { return m_rung; }
    std::size_t mostHeld() const { return m_mostHeld; }

private:
    const SystemKind& m_kind;
    clock::Instant m_now;
    bool m_on = true;
    aftercare::Leave m_leave = aftercare::Leave::granted;
    std::vector<aftercare::Booking> m_pending;
    std::vector<Rung> m_rung;
    std::size_t m_mostHeld = 0;
};

}  // namespace ebbline::test
