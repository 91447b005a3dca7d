#pragma once
/// \file
/// Centiles of a distribution over the answers.

#include "core/bands/band.h"

namespace ebbline::bands {

/// Lowest-score convention: the smallest score whose cumulative probability reaches p, 0 < p < 1.
int centileOf(const Distribution& distribution, double p);

}  // namespace ebbline::bands
