#pragma once
/// \file
/// Two means whose groups need not spread alike.
///
/// Assumes means that are nearly normal: for scores of 0..10 in small groups the rank sum is safer.
/// Source: B. L. Welch, "The generalization of 'Student's' problem when several different population
/// variances are involved", Biometrika 34 (1947) 28-35.

#include "core/result/result.h"
#include "core/statistics/proportions.h"

#include <span>

namespace ebbline::statistics {

struct Welch {
    double difference;   ///< first mean minus second
    double t;
    double degrees;      ///< of freedom, after Welch and Satterthwaite
    double probability;  ///< two-sided
    Interval limits;     ///< of the difference
};

/// \returns Reason::notFinite; Reason::outOfRange for the confidence; Reason::notEnough below two values
///          in a group or if neither group varies.
Result<Welch> welch(std::span<const double> first, std::span<const double> second, double confidence = 0.95);

}  // namespace ebbline::statistics
