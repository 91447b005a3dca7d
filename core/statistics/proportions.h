#pragma once
/// \file
/// Intervals for one proportion.

#include "core/result/result.h"

namespace ebbline::statistics {

/// Closed interval within 0..1.
struct Interval {
    double low;
    double high;
};

/// Wilson's score interval without continuity correction.
/// Source: R. G. Newcombe, "Two-sided confidence intervals for the single proportion: comparison of
/// seven methods", Statistics in Medicine 17 (1998) 857-872, method 3.
/// \returns Reason::outOfRange unless 0 <= events <= total, total > 0 and 0 < confidence < 1.
Result<Interval> wilson(long events, long total, double confidence = 0.95);

}  // namespace ebbline::statistics
