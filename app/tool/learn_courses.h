#pragma once
/// \file
/// Tables as courses that are over: what `ebbline learn` works on.

#include "core/exchange/placement_table.h"
#include "core/learning/past_course.h"

#include <vector>

namespace ebbline::tool {

/// Courses in the order of their names. A course of kind `plain` ended well, one of kind `silent` stopped
/// writing and nobody knows how it ended, every other kind is a complication. Placements may be missing:
/// then technique, zones, lots and clinic are unknown. A course with threads of several techniques is
/// "mixed".
/// A course without a row of risk has none of its own.
/// \returns Reason::notFound naming a course that has scores and no truth, the reverse, or placements or a
///          risk alone.
Result<std::vector<learning::PastCourse>> pastCourses(const std::vector<exchange::ScoreRow>& scores,
                                                      const std::vector<exchange::TruthRow>& truth,
                                                      const std::vector<exchange::PlacementRow>& placements,
                                                      const std::vector<exchange::RiskRow>& risks = {});

}  // namespace ebbline::tool
