#pragma once
/// \file
/// Locally weighted regression (LOESS): a curve through a cloud of points without a formula for it.
///
/// The value at x is that of a polynomial fitted to the `neighbours` points nearest to x, each weighted
/// by (1 - (distance / largest distance)^3)^3, so that the farthest of them weighs nothing.
/// Other programs scale the span in other ways and draw a slightly different curve.
/// Fails at the ends, where all neighbours lie on one side, and where points are few; it knows no
/// bounds, so a curve of scores may leave 0..10.
/// Sources: W. S. Cleveland, "Robust locally weighted regression and smoothing scatterplots", Journal of
/// the American Statistical Association 74 (1979) 829-836; NIST/SEMATECH e-Handbook of Statistical
/// Methods, section 4.1.4.4 "LOESS", doi:10.18434/M32189.

#include "core/result/result.h"

#include <span>
#include <vector>

namespace ebbline::statistics {

struct Point {
    double x;
    double y;
};

struct LoessDesign {
    int neighbours;  ///< at least degree + 2, at most the number of points
    int degree = 1;  ///< of the polynomial, 0..2
};

/// The curve at each of the points, in their order.
/// \returns Reason::outOfRange naming the field; Reason::notFinite; Reason::notEnough where too few of
///          the neighbours have different x.
Result<std::vector<double>> loess(std::span<const Point> points, const LoessDesign& design);

/// The curve at any x within the points. \returns as loess(); Reason::outOfRange outside of the points.
Result<double> loessAt(std::span<const Point> points, const LoessDesign& design, double x);

}  // namespace ebbline::statistics
