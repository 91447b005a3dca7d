#pragma once
/// \file
/// A phone behind RingerBells: the systems of tests/core/aftercare/phone_systems.h, with a person who
/// answers the phone's own questions.

#include "platform/notifications/ringer.h"
#include "tests/core/aftercare/phone_systems.h"

namespace ebbline::test {

/// What the test keeps hold of while the bells own the ringer.
struct FakePhone {
    FakePhone(const SystemKind& kind, clock::Instant now) : system(kind, now) {}

    PhoneSystem system;
    notifications::SystemLeave leave = notifications::SystemLeave::notAsked;
    bool punctual = true;
    bool silent = false;
    bool answers = true;  ///< false: the phone does not say what it holds
    notifications::BellWords words;
    int asked = 0;
    int settingsOpened = 0;
    int punctualSettingsOpened = 0;
    int rang = 0;
    std::function<void(notifications::RingerEvent)> hear;

    /// The person answers, here or in the phone's settings.
    void say(notifications::SystemLeave answer)
    {
        leave = answer;
        hear(notifications::RingerEvent::leaveChanged);
    }
};

class FakeRinger final : public notifications::Ringer {
public:
    explicit FakeRinger(FakePhone& phone) : m_phone(phone) {}

    void listen(std::function<void(notifications::RingerEvent)> hear) override { m_phone.hear = std::move(hear); }
    notifications::SystemLeave leave() const override { return m_phone.leave; }
    void ask() override { ++m_phone.asked; }
    void openSettings() override { ++m_phone.settingsOpened; }
    bool isPunctual() const override { return m_phone.punctual; }
    void openPunctualSettings() override { ++m_phone.punctualSettingsOpened; }
    std::size_t capacity() const override { return m_phone.system.capacity(); }
    Result<std::vector<aftercare::Booking>> pending() const override
    {
        if (!m_phone.answers)
            return fail(Reason::storageFailed, "phone: no answer");
        return m_phone.system.pending();
    }
    Done book(const aftercare::Booking& booking) override { return m_phone.system.book(booking); }
    Done cancel(const aftercare::Booking& booking) override { return m_phone.system.cancel(booking); }
    void setWords(const notifications::BellWords& words) override { m_phone.words = words; }
    bool ringNow() override
    {
        if (m_phone.silent)
            return false;
        ++m_phone.rang;
        return true;
    }

private:
    FakePhone& m_phone;
};

}  // namespace ebbline::test
