#pragma once
/// \file
/// Events per subject where one subject may have several (alerts per course), with an interval.
///
/// Exact for counts that scatter as Poisson's do. Where they scatter more, an event counts for less:
/// with phi = variance / mean, not below 1, the limits are Garwood's for total / phi events, times
/// phi / subjects. No event at all still has an upper limit: nothing seen is not nothing.
/// Sources: F. Garwood, "Fiducial limits for the Poisson distribution", Biometrika 28 (1936) 437-442;
/// the scale for more scatter, P. McCullagh, J. A. Nelder, "Generalized Linear Models", 2nd ed.,
/// Chapman & Hall 1989, section 6.2 (both from memory).

#include "core/statistics/proportions.h"

#include <span>

namespace ebbline::statistics {

struct CountRate {
    double rate;        ///< events per subject
    Interval interval;  ///< of the rate; the upper limit may exceed 1
    double scatter;     ///< phi
};

/// One count a subject.
/// \returns Reason::notEnough without a subject, Reason::outOfRange for a negative count or a confidence
///          outside 0..1.
Result<CountRate> countRate(std::span<const long> counts, double confidence = 0.95);

}  // namespace ebbline::statistics
