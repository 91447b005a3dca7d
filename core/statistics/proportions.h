#pragma once
/// \file
/// Intervals for one proportion. `events` happened among `total` independent trials; all limits are
/// shares within 0..1.
///
/// Which one: Wilson for display; Jeffreys where proportions are pooled, because it is a posterior;
/// Clopper-Pearson only where the words "covers at least 95 % whatever the truth" are wanted, since it
/// is wider than it need be. L. D. Brown, T. T. Cai, A. DasGupta, "Interval estimation for a binomial
/// proportion", Statistical Science 16 (2001) 101-133, recommend Wilson or Jeffreys for small totals.
///
/// Every function \returns Reason::outOfRange unless 0 <= events <= total, total > 0 and
/// 0 < confidence < 1.

#include "core/result/result.h"

namespace ebbline::statistics {

/// Closed interval.
struct Interval {
    double low;
    double high;
};

/// Wilson's score interval without continuity correction.
/// Source: R. G. Newcombe, "Two-sided confidence intervals for the single proportion: comparison of
/// seven methods", Statistics in Medicine 17 (1998) 857-872, method 3.
Result<Interval> wilson(long events, long total, double confidence = 0.95);

/// Equal-tailed posterior interval under Jeffreys' prior Beta(1/2, 1/2); the lower limit is 0 without
/// events and the upper limit 1 without anything else.
/// Source: Brown, Cai, DasGupta 2001, section 3.1.2 and its modification at the ends.
Result<Interval> jeffreys(long events, long total, double confidence = 0.95);

/// Exact interval: both tail tests at half the error.
/// Source: C. J. Clopper, E. S. Pearson, "The use of confidence or fiducial limits illustrated in the
/// case of the binomial", Biometrika 26 (1934) 404-413, in the form of beta quantiles.
Result<Interval> clopperPearson(long events, long total, double confidence = 0.95);

}  // namespace ebbline::statistics
