#pragma once
/// \file
/// Quantiles of a sample. Programs differ in how they read between two values; three ways are here.
///
/// Source: R. J. Hyndman, Y. Fan, "Sample quantiles in statistical packages", The American Statistician
/// 50 (1996) 361-365, whose numbers the types carry.

#include "core/result/result.h"

#include <span>

namespace ebbline::statistics {

enum class QuantileType {
    weibull = 6,   ///< position p (n + 1); NIST's, and what the handbook calls the percentile
    linear = 7,    ///< position 1 + p (n - 1); the default of R and of spreadsheets
    unbiased = 8,  ///< position p (n + 1/3) + 1/3; nearly unbiased for the median whatever the distribution
};

/// Beyond the smallest and the largest value it is that value.
/// \returns Reason::notFinite; Reason::outOfRange unless 0 <= p <= 1; Reason::notEnough without a value.
Result<double> quantile(std::span<const double> values, double p, QuantileType type = QuantileType::unbiased);

}  // namespace ebbline::statistics
