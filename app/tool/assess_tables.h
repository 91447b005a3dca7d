#pragma once
/// \file
/// Open tables judged by the rules of the phone: warnings entry by entry, triggers over each course.

#include "core/exchange/tables.h"
#include "core/triggers/protocol.h"

namespace ebbline::tool {

struct Assessed {
    std::vector<exchange::FindingRow> findings;  ///< by course, then by time
    std::size_t courses = 0;
    std::size_t ahead = 0;  ///< rows more than a day after now: judged as written, and nobody is silent for them
    bool allAhead = false;  ///< all are: then the table keeps a time of its own, and silence goes by it
};

/// `now`: of the computer's clock. Silence is judged up to the last row of anybody that does not lie ahead
/// of it, or of all if all do, as at the desk: a row that lies ahead neither ends a silence nor begins one.
/// \returns Reason::malformed with line and column if the tables disagree on when a course began (told by another
///          clock, the same moment is the same); Reason::notEnough if they hold no course.
Result<Assessed> assessTables(const std::vector<exchange::ScoreRow>& scores, const std::vector<exchange::SignRow>& signs,
                              const std::vector<exchange::TemperatureRow>& temperatures, const triggers::Protocol& protocol,
                              clock::Instant now);

}  // namespace ebbline::tool
