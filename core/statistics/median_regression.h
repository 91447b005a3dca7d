#pragma once
/// \file
/// The plane that lies nearest to all points in the sum of absolute distances: the median of y given the
/// x, where least squares gives its mean.
///
/// Exact for few points: some best plane goes through as many points as it has coefficients, and all of
/// those are tried. On whole scores the planes between two steps are equally good: which is returned is
/// then arbitrary.
/// Source: R. Koenker, G. Bassett, "Regression quantiles", Econometrica 46 (1978) 33-50.

#include "core/result/result.h"

#include <span>
#include <vector>

namespace ebbline::statistics {

/// Planes that are tried at most.
inline constexpr double mostPlanes = 1e6;

/// `rows[i]` are the x of `values[i]`. \returns the constant, then a coefficient for each x.
/// Reason::outOfRange if rows differ in length or in number from the values; Reason::notFinite;
/// Reason::tooLarge above mostPlanes; Reason::notEnough if no plane is determined by them.
Result<std::vector<double>> medianRegression(std::span<const std::vector<double>> rows, std::span<const double> values);

}  // namespace ebbline::statistics
