#pragma once
/// \file
/// Wilcoxon's rank-sum test of two independent groups (also called Mann and Whitney's), and the shift of
/// Hodges and Lehmann with its exact interval.
///
/// Assumes that one group's distribution is the other's moved. Equal values get mean ranks and the
/// distribution is that of these very ranks, so the test stays exact with ties.
/// Source: M. Hollander, D. A. Wolfe, "Nonparametric Statistical Methods", 2nd ed., Wiley 1999, sections
/// 4.1 to 4.3.

#include "core/result/result.h"
#include "core/statistics/proportions.h"

#include <optional>
#include <span>

namespace ebbline::statistics {

struct RankSum {
    double statistic;  ///< pairs in which the first group's value is the larger; a tie counts half
    double less;       ///< P(a statistic as small as this or smaller) if there is no shift
    double greater;
    double twoSided;   ///< twice the smaller, at most 1
    double shift;      ///< first minus second: median of the differences of all pairs
    /// Of the shift; none where so few values cannot reach the confidence. Exact without ties, covers
    /// more with them.
    std::optional<Interval> limits;
};

/// Values that are accepted in each group.
inline constexpr std::size_t maximumRankSumValues = 100;

/// \returns Reason::notFinite; Reason::tooLarge; Reason::outOfRange for the confidence;
///          Reason::notEnough if a group is empty or all values are equal.
Result<RankSum> rankSum(std::span<const double> first, std::span<const double> second, double confidence = 0.95);

}  // namespace ebbline::statistics
