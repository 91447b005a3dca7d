#pragma once
/// \file
/// Wilcoxon's signed-rank test of paired differences, and the shift of Hodges and Lehmann with its exact
/// interval.
///
/// Assumes that the differences lie symmetrically around the shift. Equal differences get mean ranks and
/// the distribution is that of these very ranks, so the test stays exact with ties. Differences of zero
/// are ranked and then left out (Pratt), and counted: with many of them the test says little.
/// Sources: F. Wilcoxon, "Individual comparisons by ranking methods", Biometrics Bulletin 1 (1945) 80-83;
/// J. W. Pratt, "Remarks on zeros and ties in the Wilcoxon signed rank procedures", Journal of the
/// American Statistical Association 54 (1959) 655-667; M. Hollander, D. A. Wolfe, "Nonparametric
/// Statistical Methods", 2nd ed., Wiley 1999, sections 3.1 to 3.3.

#include "core/result/result.h"
#include "core/statistics/proportions.h"

#include <optional>
#include <span>

namespace ebbline::statistics {

enum class ZeroDifferences {
    rankedThenLeftOut,  ///< Pratt
    leftOut,            ///< Wilcoxon
};

struct SignedRank {
    double statistic;    ///< sum of the ranks of the differences above 0
    long zeros;          ///< differences of exactly 0
    double less;         ///< P(a sum as small as this or smaller) if the shift is 0
    double greater;      ///< P(a sum as large as this or larger)
    double twoSided;     ///< twice the smaller, at most 1
    double shift;        ///< median of the means of all pairs of differences, each with itself too
    /// Of the shift; none where so few differences cannot reach the confidence. Exact without ties,
    /// covers more with them.
    std::optional<Interval> limits;
};

/// Differences that are accepted.
inline constexpr std::size_t maximumSignedRankPairs = 400;

/// \returns Reason::notFinite; Reason::tooLarge; Reason::outOfRange for the confidence;
///          Reason::notEnough if no difference is other than 0.
Result<SignedRank> signedRank(std::span<const double> differences, double confidence = 0.95,
                              ZeroDifferences zeros = ZeroDifferences::rankedThenLeftOut);

}  // namespace ebbline::statistics
