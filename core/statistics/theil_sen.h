#pragma once
/// \file
/// A straight line that single wild points do not move: the slope is the median of the slopes between
/// all pairs of points with different x, the intercept the median of y - slope * x.
///
/// Some texts put the line through the medians of x and y instead; that gives another intercept. Moves
/// once 29 % of the points are wild.
/// Sources: H. Theil, "A rank-invariant method of linear and polynomial regression analysis",
/// Indagationes Mathematicae 12 (1950) 85-91; P. K. Sen, "Estimates of the regression coefficient based
/// on Kendall's tau", Journal of the American Statistical Association 63 (1968) 1379-1389.

#include "core/result/result.h"
#include "core/statistics/loess.h"

#include <span>

namespace ebbline::statistics {

struct Line {
    double slope;
    double intercept;
};

/// Points that theilSen() accepts; it looks at all pairs.
inline constexpr std::size_t maximumTheilSenPoints = 4000;

/// \returns Reason::notFinite; Reason::notEnough below three points or without different x;
///          Reason::tooLarge.
Result<Line> theilSen(std::span<const Point> points);

}  // namespace ebbline::statistics
