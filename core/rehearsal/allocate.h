#pragma once
/// \file
/// How a budget of false alerts is divided between the statistics that answer for a bleeding, an
/// infection and a slow recovery: so that none of the three loses much more than the others against
/// what it would find if the whole budget were its own. docs/statistics/calibration.md.
///
/// Inside of core/rehearsal.

#include "core/rehearsal/cohort.h"

namespace ebbline::rehearsal {

/// Peaks of troubled courses within the time that counts: 72 hours from the onset of an infection,
/// 24 of a bleeding, all that is left for a slow recovery.
using TroubledPeaks = std::vector<std::vector<Peaks>>;

/// Puts assumed trouble on courses of the cohort, at most `most` of each kind, spread evenly.
TroubledPeaks troubledPeaks(const std::vector<const KnownCourse*>& plain, const triggers::Protocol& protocol,
                            std::uint64_t seed, std::size_t most);

/// Shares for a budget (a share of courses), by a coordinate search from `start`; the shares of the
/// other statistics stay as they are.
Shares allocated(const Cohort& cohort, const TroubledPeaks& troubled, double budget, const Shares& start);

}  // namespace ebbline::rehearsal
