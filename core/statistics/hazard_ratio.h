#pragma once
/// \file
/// How many times faster a second group reaches an event than the first: the proportional-hazards model
/// of Cox for two groups.
///
/// Assumes that the ratio is the same at all times; where the curves cross it says nothing, and the
/// difference of restricted means (survival.h) says more.
/// Sources: D. R. Cox, "Regression models and life-tables", Journal of the Royal Statistical Society B 34
/// (1972) 187-220; ties after B. Efron, Journal of the American Statistical Association 72 (1977) 557-565,
/// and N. Breslow, Biometrics 30 (1974) 89-99.

#include "core/statistics/survival.h"

namespace ebbline::statistics {

enum class Ties {
    efron,    ///< those who share a time leave the others at risk by shares; closer where ties are many
    breslow,  ///< all who share a time count as at risk throughout
};

struct HazardRatio {
    double logRatio;  ///< of the second group's hazard to the first's
    double error;     ///< standard error of logRatio
    double ratio;
    Interval limits;  ///< of the ratio
};

/// \returns Reason::outOfRange for a time that is negative or not finite or for the confidence;
///          Reason::notEnough if a group is empty, nothing happened while both were at risk, or the
///          likelihood has no maximum: one group always comes first.
Result<HazardRatio> hazardRatio(std::span<const Followed> first, std::span<const Followed> second, Ties ties = Ties::efron,
                                double confidence = 0.95);

}  // namespace ebbline::statistics
