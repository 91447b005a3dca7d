#pragma once
/// \file
/// What has to be said of a table before anything is read off it.

#include "core/exchange/tables.h"
#include "core/rehearsal/invented_course.h"

#include <ostream>
#include <string_view>
#include <vector>

namespace ebbline::tool {

/// Says how many rows lie more than a day ahead of the clock, which one of two clocks has wrong, and, where only days 0 to 21 are
/// looked at (`upToDay21`), how many were written later. Says nothing where there is nothing to say.
void noteMoments(std::string_view command, const std::vector<exchange::ScoreRow>& scores, clock::Instant now, bool upToDay21,
                 std::ostream& notes);

/// Takes uncomplicated courses out that have scores of fewer than bands::fewestObservedDays days: they would say that little
/// happens, because little was written. The desk leaves them out in the same way. \returns how many.
int leaveHalfWrittenOut(std::vector<rehearsal::KnownCourse>& courses);

}  // namespace ebbline::tool
