#include "core/aftercare/booking.h"

#include <algorithm>
#include <charconv>

namespace ebbline::aftercare {

namespace {

auto minuteOf(clock::Instant moment) { return std::chrono::floor<std::chrono::minutes>(moment); }

}  // namespace

std::vector<Booking> bookingsOf(std::vector<clock::Instant> dues, clock::Instant now, std::size_t atMost)
{
    std::erase_if(dues, [&](clock::Instant due) { return due <= now; });
    std::sort(dues.begin(), dues.end());
    std::vector<Booking> bookings;
    for (const clock::Instant due : dues) {
        if (!bookings.empty() && minuteOf(bookings.back().at) == minuteOf(due))
            continue;
        if (bookings.size() == atMost) {
            if (!bookings.empty())
                bookings.back().asksToOpen = true;
            break;
        }
        bookings.push_back({due, false});
    }
    return bookings;
}

namespace {

/// How far the phone's list agrees with what it should be, from the soonest on.
std::size_t agreement(const std::vector<Booking>& wanted, std::vector<Booking> held)
{
    std::sort(held.begin(), held.end());
    std::size_t same = 0;
    while (same < wanted.size() && std::binary_search(held.begin(), held.end(), wanted[same]))
        ++same;
    return same;
}

}  // namespace

BellState bringUpToDate(PhoneBells& bells, std::vector<clock::Instant> dues, clock::Instant now)
{
    BellState state;
    state.leave = bells.leave();
    const auto before = bells.pending();
    if (!before) {
        state.problem = before.error();
        return state;
    }
    // A system that rings late still holds bells whose time has come. They take up room, and may still ring
    // unless what they ring for has been answered or put off.
    const bool granted = state.leave == Leave::granted;
    const auto mayRingLate = [&, dues](const Booking& booking) {
        return granted && booking.at <= now
            && std::any_of(dues.begin(), dues.end(), [&](clock::Instant due) { return minuteOf(due) == minuteOf(booking.at); });
    };
    const auto late = static_cast<std::size_t>(std::count_if(before->begin(), before->end(), mayRingLate));
    const std::size_t room = std::min(mostBooked, bells.capacity());
    const std::vector<Booking> wanted = bookingsOf(std::move(dues), now, room - std::min(room, late));
    // Without leave nothing rings, but a phone that still holds bells would ring them on the day it is given.
    const std::vector<Booking> target = granted ? wanted : std::vector<Booking>{};
    for (const Booking& booking : *before)
        if (!mayRingLate(booking) && std::find(target.begin(), target.end(), booking) == target.end())
            if (const Done cancelled = bells.cancel(booking); !cancelled)
                state.problem = cancelled.error();
    for (const Booking& booking : target) {
        if (std::find(before->begin(), before->end(), booking) != before->end())
            continue;
        if (const Done booked = bells.book(booking); !booked) {
            state.problem = booked.error();
            break;
        }
    }

    const auto held = bells.pending();
    if (!held) {
        state.problem = held.error();
        return state;
    }
    const std::size_t good = agreement(target, *held);
    state.booked = good;
    if (good > 0) {
        state.next = target.front().at;
        state.goodUntil = target[good - 1].at;
    }
    state.complete = good == wanted.size() && (wanted.empty() || !wanted.back().asksToOpen);
    if (state.leave == Leave::granted && good < target.size() && !state.problem)
        state.problem = Error{Reason::refused, "bells: the phone keeps fewer than it was given"};
    return state;
}

std::string writeBookings(const std::vector<Booking>& bookings)
{
    std::string text;
    for (const Booking& booking : bookings) {
        if (!text.empty())
            text += ' ';
        text += std::to_string(booking.at.time_since_epoch().count());
        if (booking.asksToOpen)
            text += '+';
    }
    return text;
}

Result<std::vector<Booking>> readBookings(std::string_view text)
{
    std::vector<Booking> bookings;
    while (!text.empty()) {
        if (bookings.size() == 10 * mostBooked)
            return fail(Reason::tooLarge, "bells: more than any phone is given");
        std::int64_t value = 0;
        const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
        if (problem != std::errc{} || value < 0)
            return fail(Reason::malformed, "bells: want milliseconds since 1970");
        text.remove_prefix(static_cast<std::size_t>(end - text.data()));
        Booking booking{clock::Instant{std::chrono::milliseconds{value}}, false};
        if (!text.empty() && text.front() == '+') {
            booking.asksToOpen = true;
            text.remove_prefix(1);
        }
        if (!text.empty()) {
            if (text.front() != ' ' || text.size() == 1)
                return fail(Reason::malformed, "bells: want one space between two");
            text.remove_prefix(1);
        }
        bookings.push_back(booking);
    }
    return bookings;
}

}  // namespace ebbline::aftercare
