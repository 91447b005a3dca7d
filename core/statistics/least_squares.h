#pragma once
/// \file
/// The straight line with the smallest sum of squared distances in y, and a curve that levels off.
///
/// Assumes independent errors of one spread; one wild point moves the line (theil_sen does not let it).
/// Check values: NIST Statistical Reference Datasets, Norris (line) and Misra1a (curve).

#include "core/result/result.h"
#include "core/statistics/loess.h"

#include <span>

namespace ebbline::statistics {

struct LineFit {
    double slope;
    double intercept;
    double slopeError;         ///< standard errors
    double interceptError;
    double residualDeviation;  ///< of the points around the line, with n - 2 degrees of freedom
    double determination;      ///< share of the variance of y that the line takes up, 0..1
};

/// \returns Reason::notFinite; Reason::notEnough below three points or if x or y do not vary.
Result<LineFit> leastSquares(std::span<const Point> points);

/// y = top (1 - exp(-rate x)).
struct LevellingOff {
    double top;
    double rate;               ///< per unit of x
    double topError;           ///< standard errors, of the linearised curve
    double rateError;
    double squares;            ///< sum of the squared distances
    double residualDeviation;
};

/// From a first guess, by damped Gauss-Newton steps (Levenberg 1944, Marquardt 1963).
/// \returns Reason::notFinite; Reason::outOfRange for a guess that is not positive; Reason::notEnough
///          below three points, or where the points do not settle on a curve.
Result<LevellingOff> fitLevellingOff(std::span<const Point> points, double topGuess, double rateGuess);

}  // namespace ebbline::statistics
