#pragma once
/// \file
/// What a complication is assumed to add to an ordinary course, in points: put on courses of a
/// calibration cohort, whosever they are, to see how a budget of false alerts is best divided.
/// An assumption, like the models of invented courses (docs/statistics/calibration.md).
///
/// Inside of core/rehearsal.

#include "core/rehearsal/chance.h"
#include "core/rehearsal/invented_course.h"

namespace ebbline::rehearsal {

inline constexpr std::array troubledKinds{Kind::infection, Kind::haematoma, Kind::slowRecovery};

/// The course with trouble of a kind in it, its onset and side drawn.
/// \pre kind is one of troubledKinds, the course is plain
KnownCourse troubled(const KnownCourse& course, Kind kind, Chance& chance);

}  // namespace ebbline::rehearsal
