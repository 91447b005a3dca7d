#pragma once
/// \file
/// Reads a calendar as RFC 5545 demands it and no wider: what two common readers let pass (an event
/// without UID or DTSTAMP) fails here. Knows what the diary writes; anything else is a fault.

#include "core/clock/instant.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace ebbline::test {

struct CalendarZone {
    struct Observance {
        std::chrono::local_time<std::chrono::seconds> starts;
        std::chrono::minutes before{0}, offset{0};
    };
    std::vector<Observance> observances;
    /// The instant of a wall-clock time, by the observances alone.
    clock::Instant instantOf(std::chrono::local_time<std::chrono::seconds> local) const;
};

struct ReadEvent {
    std::string uid;
    clock::Instant at{};
    bool inUtc = false;
    std::string summary;
    int alarms = 0;
    int sequence = 0;
};

struct ReadCalendar {
    std::vector<std::string> faults;  ///< empty: it is one
    std::map<std::string, CalendarZone> zones;
    std::vector<ReadEvent> events;
};

ReadCalendar readStrictly(std::string_view file);

}  // namespace ebbline::test
