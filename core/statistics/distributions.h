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

/// P(a beta variable is at most x), a > 0, b > 0, 0 <= x <= 1: the regularised incomplete beta function.
/// \returns Reason::outOfRange.
Result<double> betaCdf(double x, double a, double b);

/// P(a gamma variable of this shape and scale 1 is at most x), x >= 0, shape > 0. \returns Reason::outOfRange.
Result<double> gammaCdf(double x, double shape);

/// P(at most `events` of `total` independent trials of probability p happen). \returns Reason::outOfRange
/// unless 0 <= events <= total and 0 <= p <= 1.
Result<double> binomialCdf(long events, long total, double p);

/// P(Student's variable is at least as far from 0 as t), degrees of freedom > 0. \returns Reason::outOfRange.
Result<double> studentTwoSided(double t, double degrees);

/// P(a chi-square variable exceeds x), x >= 0, degrees of freedom > 0. \returns Reason::outOfRange.
Result<double> chiSquareUpper(double x, double degrees);

/// Quantile of chi-square, 0 <= p < 1, degrees of freedom > 0. \returns Reason::outOfRange.
Result<double> chiSquareQuantile(double p, double degrees);

/// Student's quantile, 0 < p < 1, degrees of freedom > 0. \returns Reason::outOfRange.
Result<double> studentQuantile(double p, double degrees);

/// Quantile of F, 0 < p < 1, both degrees of freedom > 0. \returns Reason::outOfRange.
Result<double> fQuantile(double p, double upperDegrees, double lowerDegrees);

}  // namespace ebbline::statistics
