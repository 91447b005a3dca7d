#pragma once
/// \file
/// z-scores of a positive, continuous measurement whose distribution is skewed: after the Box-Cox power
/// `power` it is normal, with the median and a coefficient of variation of its own.
///
///     z = ((x / median)^power - 1) / (power * variation),  or log(x / median) / variation at power 0
///
/// Not for scores of 0..10: zeros have no z here; those go through the ordinal band.
/// Source: T. J. Cole, P. J. Green, "Smoothing reference centile curves: the LMS method and penalized
/// likelihood", Statistics in Medicine 11 (1992) 1305-1319.

#include "core/result/result.h"

namespace ebbline::statistics {

struct Lms {
    double power;      ///< L, finite
    double median;     ///< M, > 0, in the unit of the measurement
    double variation;  ///< S, > 0
};

/// \returns Reason::outOfRange unless value > 0 and the three parameters are within their bounds.
Result<double> lmsScore(const Lms& reference, double value);

/// The measurement at a z-score. \returns Reason::outOfRange for parameters out of bounds, or where no
/// measurement has this z (1 + power * variation * z <= 0).
Result<double> lmsValue(const Lms& reference, double z);

}  // namespace ebbline::statistics
