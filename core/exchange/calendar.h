#pragma once
/// \file
/// Reminders as a calendar file: RFC 5545 (Desruisseaux, "Internet Calendaring and Scheduling Core
/// Object Specification (iCalendar)", 2009), sections 3.4 to 3.8.
///
/// A calendar travels to other machines, so nothing in it says what a reminder is about: the words
/// are the caller's and the same for every event, and the identifiers are random to who reads them.

#include "core/aftercare/care_plan.h"

namespace ebbline::exchange {

struct CalendarEvent {
    std::string uid;  ///< 8..64 characters of a-z, 0-9 and dashes
    clock::Instant at{};
};

struct CalendarWords {
    std::string summary;  ///< of every event, and what its alarm says
    std::string language;  ///< BCP 47
};

/// One VCALENDAR with the zone and its changes, an event with an alarm for each reminder, CRLF, lines
/// folded at 75 octets.
/// \param stamp  when the file is made
/// \param changes  how often what the reminders hang on was changed: their SEQUENCE (section 3.8.7.4), by which a calendar
///        knows that an event is another one than what it took in before
/// \returns Reason::malformed for a uid out of its form or a control character in the words,
///          Reason::notEnough for no event.
Result<std::string> writeCalendar(const std::vector<CalendarEvent>& events, const aftercare::Zone& zone,
                                  const CalendarWords& words, clock::Instant stamp, std::size_t changes = 0);

}  // namespace ebbline::exchange
