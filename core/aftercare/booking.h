#pragma once
/// \file
/// Booking reminders ahead with a phone. What is due is computed from the care plan; the phone only
/// rings a bell at the moments it was given, and is told neither what for nor how many. The list in
/// the program is the truth: a bell that does not ring loses nothing but its sound.

#include "core/clock/instant.h"
#include "core/result/result.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace ebbline::aftercare {

/// Most bells booked at once. Phones cap what a program may have pending (64 on iOS, by default 500 on Android:
/// sources in docs/guides/phones.md); the rest is left for "later" and for tests.
inline constexpr std::size_t mostBooked = 48;

/// One bell. Several reminders of one minute ring once.
struct Booking {
    clock::Instant at{};
    /// More follow than may be booked: this bell asks to open the diary, which books the next ones.
    bool asksToOpen = false;
    auto operator<=>(const Booking&) const = default;
};

/// The bells for these due moments, those after `now` only, soonest first, at most `atMost`.
/// Each rings at its own minute or, for several within one, at the first of them.
std::vector<Booking> bookingsOf(std::vector<clock::Instant> dues, clock::Instant now, std::size_t atMost = mostBooked);

/// What the person allowed.
enum class Leave : std::uint8_t { notAsked = 1, granted = 2, denied = 3, noBell = 4 };  ///< noBell: this device has none

/// The bells of a phone, as its system keeps them. Implemented by platform/notifications.
class PhoneBells {
public:
    virtual ~PhoneBells() = default;
    virtual Leave leave() const = 0;
    /// Most that the system keeps for one program.
    virtual std::size_t capacity() const = 0;
    /// What the system says it has pending.
    virtual Result<std::vector<Booking>> pending() const = 0;
    virtual Done book(const Booking& booking) = 0;
    virtual Done cancel(const Booking& booking) = 0;
};

/// What can truly be said about the bells, read back from the system after booking.
struct BellState {
    Leave leave = Leave::notAsked;
    std::size_t booked = 0;
    std::optional<clock::Instant> next;
    /// All bells up to here are with the phone; empty: none has to be.
    std::optional<clock::Instant> goodUntil;
    bool complete = false;  ///< nothing is due later than what is booked
    std::optional<Error> problem;
    bool operator==(const BellState&) const = default;
};

/// Makes the phone's list what it should be: cancels what is not due any more, books what is missing,
/// soonest first, and reads back what the phone really keeps.
BellState bringUpToDate(PhoneBells& bells, std::vector<clock::Instant> dues, clock::Instant now);

/// The pending bells as one line of text, for systems that forget them: "1803891600000 1803978000000+".
/// Holds times only.
std::string writeBookings(const std::vector<Booking>& bookings);
/// \returns Reason::malformed for any other text, Reason::tooLarge for more than 10 * mostBooked.
Result<std::vector<Booking>> readBookings(std::string_view text);

}  // namespace ebbline::aftercare
