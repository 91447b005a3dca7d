#pragma once
/// \file
/// The variances of a local-level model from one series, by maximum likelihood; and filter, smoother and
/// forecast from a start of which nothing is known (diffuse).
///
/// The first observation only places the level; the likelihood is the product of the densities of the
/// others, so its logarithm has one term less than there are observations. Some books add the constant
/// of the first.
/// Source: J. Durbin, S. J. Koopman, "Time Series Analysis by State Space Methods", 2nd ed., Oxford 2012,
/// sections 2.9 and 2.10.
///
/// In all functions an inner list holds what was observed in one step; an empty one is a missing step.

#include "core/result/result.h"
#include "core/statistics/local_level.h"

#include <span>
#include <vector>

namespace ebbline::statistics {

struct LocalLevelVariances {
    double observation;  ///< of one observation, > 0
    double drift;        ///< of one step of the level, >= 0
};

struct LocalLevelFit {
    LocalLevelVariances variances;
    double logLikelihood;
    /// False if the series is likeliest with no drift at all: then drift is 0, which does not mean
    /// that there is none.
    bool driftSeen;
};

/// Logarithm of the likelihood from a diffuse start.
/// \returns Reason::outOfRange, Reason::notFinite; Reason::notEnough below two observations.
Result<double> localLevelLogLikelihood(const LocalLevelVariances& variances, std::span<const std::vector<double>> steps);

/// \returns Reason::notFinite; Reason::notEnough below four observations, if all are equal, or if the
///          series jumps so that no noise of observation is seen.
Result<LocalLevelFit> fitLocalLevel(std::span<const std::vector<double>> steps);

/// The filter after all steps. \returns as localLevelLogLikelihood(), but one observation is enough.
Result<LocalLevelFilter> filterFromNothing(const LocalLevelVariances& variances,
                                           std::span<const std::vector<double>> steps);

/// The smoothed level at every step. \returns as filterFromNothing().
Result<std::vector<LevelEstimate>> smoothFromNothing(const LocalLevelVariances& variances,
                                                     std::span<const std::vector<double>> steps);

}  // namespace ebbline::statistics
