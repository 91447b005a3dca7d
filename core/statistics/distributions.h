#pragma once
/// \file
/// The standard distributions that other modules need, over Boost.Math.

#include "core/result/result.h"

namespace ebbline::statistics {

/// Standard normal cumulative probability.
double normalCdf(double z) noexcept;

/// Standard normal quantile. \returns Reason::outOfRange unless 0 < p < 1.
Result<double> normalQuantile(double p);

/// Beta quantile, a > 0, b > 0, 0 <= p <= 1. \returns Reason::outOfRange.
Result<double> betaQuantile(double p, double a, double b);

/// P(a chi-square variable exceeds x), x >= 0, degrees of freedom > 0. \returns Reason::outOfRange.
Result<double> chiSquareUpper(double x, double degrees);

/// Student's quantile, 0 < p < 1, degrees of freedom > 0. \returns Reason::outOfRange.
Result<double> studentQuantile(double p, double degrees);

/// Quantile of F, 0 < p < 1, both degrees of freedom > 0. \returns Reason::outOfRange.
Result<double> fQuantile(double p, double upperDegrees, double lowerDegrees);

}  // namespace ebbline::statistics
