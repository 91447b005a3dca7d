#pragma once
/// \file
/// Many means of one known variance, drawn towards their own mean: together they are nearer to the truth
/// than each by itself (James and Stein), however strange that looks for the best of them.
///
/// Source: B. Efron, C. Morris, "Stein's paradox in statistics", Scientific American 236 (1977) 119-127.

#include "core/result/result.h"

#include <span>
#include <vector>

namespace ebbline::statistics {

struct Shrinkage {
    double mean;
    double factor;               ///< 1: each stays where it is; 0: all are the mean. Never below 0
    std::vector<double> shrunk;  ///< mean + factor * (value - mean)
};

/// factor = 1 - (k - 3) variance / sum of (value - mean)^2.
/// \returns Reason::notFinite; Reason::outOfRange unless variance > 0; Reason::notEnough below four values.
Result<Shrinkage> shrunkMeans(std::span<const double> values, double variance);

}  // namespace ebbline::statistics
