#pragma once
/// \file
/// ISO 8601 date-times with an offset, the only form of time in our open files:
/// `2027-03-28T14:05:00+02:00`, seconds optional with up to three decimals, `Z` for +00:00.

#include "core/clock/instant.h"
#include "core/result/result.h"

#include <string>
#include <string_view>

namespace ebbline::clock {

/// \returns Reason::malformed for any other form, a missing offset included: a time without
///          an offset cannot be ordered. Reason::outOfRange for an impossible date or time,
///          or an offset beyond 14 hours. The zone of the result is empty.
Result<Moment> parseIso8601(std::string_view text);

/// `2027-03-28T14:05:00+02:00`; milliseconds only if there are any.
std::string toIso8601(const Moment& moment);

/// The same instant in UTC, `2027-03-28T12:05:00Z`.
std::string toIso8601(Instant instant);

/// `2027-03-28`.
std::string toIso8601(LocalDay day);

/// The offset of a wall clock as it stands beside a time on paper: `UTC`, `UTC+1`, `UTC-3:30`. ASCII:
/// every font has it, and no line breaks between a hyphen and a digit.
std::string offsetText(const Moment& moment);

}  // namespace ebbline::clock
