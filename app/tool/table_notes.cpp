#include "app/tool/table_notes.h"

#include "core/bands/eligibility.h"
#include "core/rehearsal/taught.h"

#include <algorithm>

namespace ebbline::tool {

void noteMoments(std::string_view command, const std::vector<exchange::ScoreRow>& scores, clock::Instant now, bool upToDay21,
                 std::ostream& notes)
{
    const auto ahead = std::ranges::count_if(scores, [&](const auto& row) { return row.enteredAt.at > now + std::chrono::days(1); });
    if (ahead > 0)
        notes << "ebbline " << command << ": note: " << ahead << (ahead == 1 ? " row lies" : " rows lie")
              << " more than a day ahead of this computer's clock, taken as written\n";
    if (!upToDay21)
        return;
    const auto later = std::ranges::count_if(
        scores, [](const auto& row) { return clock::dayOfRecovery(row.treatedAt, row.enteredAt) >= rehearsal::inventedDays; });
    if (later > 0)
        notes << "ebbline " << command << ": note: " << later << (later == 1 ? " row was" : " rows were") << " written after day 21, beyond which no alert is counted\n";
}

int leaveHalfWrittenOut(std::vector<rehearsal::KnownCourse>& courses)
{
    return static_cast<int>(std::erase_if(courses, [](const rehearsal::KnownCourse& course) {
        return course.truth.isPlain() && rehearsal::observedDays(course.input) < bands::fewestObservedDays;
    }));
}

}  // namespace ebbline::tool
