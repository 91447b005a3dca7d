#pragma once
/// \file
/// An interval for a share whose readings come in groups that belong together (several days of one
/// patient): readings of a group resemble each other, so they count for less than their number.
///
///     p     = sum of events / sum of readings
///     var   = k / (k - 1) * sum over groups of (events_i - p readings_i)^2 / (sum of readings)^2
///     n_eff = min(p (1 - p) / var, sum of readings) * (z / t)^2
///
/// with z and t the quantiles of the normal distribution and of Student's with k - 1 degrees of freedom,
/// because var is estimated from k groups; and the interval of Clopper and Pearson for p n_eff events of
/// n_eff readings. Where all readings say the same, var is 0 and says nothing: n_eff is then the number
/// of groups, the fewest it can honestly be. With few groups and rare events it still holds less often
/// than it says: docs/statistics/proportions.md.
/// Sources: variance of a ratio over groups of unequal size, W. G. Cochran, "Sampling Techniques",
/// 3rd ed., Wiley 1977, chapter 11; the effective number in an interval for a share, E. L. Korn,
/// B. I. Graubard, Survey Methodology 24 (1998) 193-201 (both from memory).

#include "core/statistics/proportions.h"

#include <span>

namespace ebbline::statistics {

struct Group {
    long events;    ///< 0..readings
    long readings;  ///< > 0
};

struct ClusteredShare {
    double share;
    Interval interval;
    double effective;  ///< n_eff
};

/// \returns Reason::notEnough with fewer than two groups, Reason::outOfRange for a group out of its
///          bounds or a confidence outside 0..1.
Result<ClusteredShare> clusteredShare(std::span<const Group> groups, double confidence = 0.95);

}  // namespace ebbline::statistics
