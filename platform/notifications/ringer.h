#pragma once
/// \file
/// A phone's own system as far as bells go: what it is asked, what it answers. One for each kind of
/// phone (platform/android, platform/ios), chosen when the program is built, and one in tests. No rule
/// lives behind it that could live in RingerBells.

#include "platform/notifications/bells.h"

#include <functional>

namespace ebbline::notifications {

/// What the person told the phone itself about this program. The numbers are used across languages:
/// never renumber.
enum class SystemLeave : std::uint8_t { notAsked = 1, granted = 2, denied = 3 };

/// What the phone tells. The numbers are used across languages: never renumber.
enum class RingerEvent : std::uint8_t {
    openTouched = 1,
    laterTouched = 2,  ///< only while the program is in sight; otherwise the phone puts the bell off itself
    leaveChanged = 3,  ///< or may have
    rang = 4,
    zoneChanged = 5,   ///< or may have
};

class Ringer {
public:
    virtual ~Ringer() = default;

    /// From now on, on the thread of the program. The touch that started the program comes late, not never.
    virtual void listen(std::function<void(RingerEvent)> hear) = 0;

    virtual SystemLeave leave() const = 0;
    /// Asks the person in the phone's own window. The answer comes as leaveChanged.
    virtual void ask() = 0;
    /// Opens the page of the phone's settings where a refusal can be taken back.
    virtual void openSettings() = 0;

    /// False if the phone may ring late to save power and the person could change that.
    virtual bool isPunctual() const = 0;
    virtual void openPunctualSettings() = 0;

    /// Most that the phone keeps for one program.
    virtual std::size_t capacity() const = 0;
    virtual Result<std::vector<aftercare::Booking>> pending() const = 0;
    virtual Done book(const aftercare::Booking& booking) = 0;
    virtual Done cancel(const aftercare::Booking& booking) = 0;
    virtual void setWords(const BellWords& words) = 0;
    /// \returns false if the phone did not take it.
    virtual bool ringNow() = 0;
};

}  // namespace ebbline::notifications
