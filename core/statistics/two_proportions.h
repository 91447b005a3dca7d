#pragma once
/// \file
/// Two independent proportions: how far apart, and how likely the order is.

#include "core/result/result.h"

namespace ebbline::statistics {

/// `events` among `total` independent trials.
struct Counts {
    long events;
    long total;
};

/// First minus second proportion, each within -1..1.
struct Difference {
    double difference;
    double low;
    double high;
};

/// Difference of two proportions with the interval built from both Wilson intervals.
/// Source: R. G. Newcombe, "Interval estimation for the difference between independent proportions:
/// comparison of eleven methods", Statistics in Medicine 17 (1998) 873-890, method 10.
/// \returns Reason::outOfRange unless 0 <= events <= total, total > 0 on both sides and
///          0 < confidence < 1.
Result<Difference> newcombe(const Counts& first, const Counts& second, double confidence = 0.95);

inline constexpr double probabilityLowerError = 1e-8;

/// Posterior probability that the first proportion is the lower one, both with Jeffreys' prior
/// Beta(1/2, 1/2), independent. Absolute error below probabilityLowerError: what lies nearer to 0 or 1 than that is
/// not known more exactly.
/// Source: definition; P(p1 < p2) as the integral of P(p2 > x) over the posterior of p1.
/// \returns Reason::outOfRange as newcombe().
Result<double> probabilityLower(const Counts& first, const Counts& second);

}  // namespace ebbline::statistics
