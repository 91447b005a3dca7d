#pragma once
/// \file
/// Partial pooling: what many groups (clinics, techniques) say about one of them. A group with few
/// trials is drawn towards the others, one with many stays where it is.
///
/// Sources: A. Gelman, J. B. Carlin, H. S. Stern, D. B. Dunson, A. Vehtari, D. B. Rubin, "Bayesian Data
/// Analysis", 3rd ed., CRC 2013, chapter 5; J. E. Mosimann, "On the compound multinomial distribution,
/// the multivariate beta-distribution, and correlations among proportions", Biometrika 49 (1962) 65-82.

#include "core/result/result.h"
#include "core/statistics/two_proportions.h"

#include <optional>
#include <span>
#include <vector>

namespace ebbline::statistics {

/// Beta distribution of a proportion; both > 0. a + b is its weight in trials.
struct Beta {
    double a;
    double b;

    double mean() const noexcept { return a / (a + b); }
    double variance() const noexcept { return a * b / ((a + b) * (a + b) * (a + b + 1)); }
};

/// The distribution after the group's own trials. \pre 0 <= events <= total
Beta updated(const Beta& prior, const Counts& group) noexcept;

/// Logarithm of the probability of all groups, without the binomial coefficients.
/// \returns Reason::outOfRange for counts or parameters that cannot be.
Result<double> betaBinomialLogLikelihood(const Beta& between, std::span<const Counts> groups);

/// The distribution between groups whose mean and variance are those of the groups' shares, each
/// group counting the same. A first answer that ignores the groups' sizes.
/// \returns Reason::outOfRange; Reason::notEnough below two groups, or if the shares do not spread, or
///          spread more than a beta distribution can.
Result<Beta> betaFromMoments(std::span<const Counts> groups);

/// How the groups' true shares spread, by maximum likelihood of the beta-binomial distribution. None: they
/// differ no more than chance makes them (the weight grows without bound), or all trials ended alike.
/// \returns Reason::outOfRange; Reason::notEnough below two groups, or if they lie further apart than a
///          distribution between them can say (each is all events or none), or the likelihood has no maximum.
Result<std::optional<Beta>> spreadBetween(std::span<const Counts> groups);

/// spreadBetween() where there must be one.
/// \returns Reason::outOfRange; Reason::notEnough below two groups, or if the groups differ no more
///          than chance makes them (the weight grows without bound), or the likelihood has no maximum.
Result<Beta> fitBetaBinomial(std::span<const Counts> groups);

/// P(the next `run` trials are all events). \pre run >= 0
double probabilityOfRun(const Beta& belief, int run) noexcept;

/// One group's counts by category.
using CategoryCounts = std::vector<long>;

/// Shares by category after a group's own counts: (weight * seed + counts) / (weight + sum).
/// \returns Reason::outOfRange if the lengths differ, the seed has a share <= 0 or does not sum to 1
///          (within 1e-9), a count is negative, or the weight is not > 0.
Result<std::vector<double>> pooledShares(std::span<const double> seed, double weight, const CategoryCounts& counts);

/// Logarithm of the probability of all groups under a Dirichlet distribution `weight * seed` between
/// them, without the multinomial coefficients. \returns Reason::outOfRange as pooledShares().
Result<double> dirichletMultinomialLogLikelihood(std::span<const double> seed, double weight,
                                                 std::span<const CategoryCounts> groups);

/// The weight of the seed, in trials, that makes the groups most likely; searched within 0.01..1e6.
/// \returns Reason::outOfRange; Reason::notEnough below two groups, or if the best weight lies at an
///          end of what is searched: the groups do not say.
Result<double> fitSeedWeight(std::span<const double> seed, std::span<const CategoryCounts> groups);

}  // namespace ebbline::statistics
