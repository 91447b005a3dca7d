#pragma once
/// \file
/// Do two groups reach an event at the same pace? At each time of an event the events of the first
/// group are compared with what its share of those at risk would have; the test is
/// (O - E)^2 / V with the hypergeometric variance, not the sum of (O - E)^2 / E, which is smaller.
///
/// Fails where the curves cross: differences early and late cancel. Says nothing of how much; the
/// difference of restricted means does.
/// Sources: N. Mantel, "Evaluation of survival data and two new rank order statistics arising in its
/// consideration", Cancer Chemotherapy Reports 50 (1966) 163-170; R. Peto, J. Peto, "Asymptotically
/// efficient rank invariant test procedures", Journal of the Royal Statistical Society A 135 (1972)
/// 185-207; the family of D. P. Harrington, T. R. Fleming, Biometrika 69 (1982) 553-566.

#include "core/result/result.h"
#include "core/statistics/survival.h"

#include <span>

namespace ebbline::statistics {

enum class Emphasis {
    equal,  ///< log-rank
    early,  ///< Peto and Peto: each time weighs as many as were still without the event
};

struct LogRank {
    double observedFirst;   ///< weighted events
    double expectedFirst;
    double observedSecond;
    double expectedSecond;
    double variance;        ///< of observedFirst - expectedFirst, > 0
    double chiSquare;       ///< one degree of freedom
    double probability;     ///< of a value as large as this if the paces are equal
};

/// \returns Reason::outOfRange for a time that is negative or not finite; Reason::notEnough if a group
///          is empty or nothing happened while both were at risk.
Result<LogRank> logRank(std::span<const Followed> first, std::span<const Followed> second,
                        Emphasis emphasis = Emphasis::equal);

}  // namespace ebbline::statistics
