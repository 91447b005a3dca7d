#pragma once
/// \file
/// The running statistics behind the triggers, one threshold each. Calibration sets these
/// thresholds and nothing else. Definitions: docs/statistics/triggers.md.

#include "core/triggers/protocol.h"

#include <array>

namespace ebbline::triggers {

enum class Statistic : std::uint8_t {
    level,           ///< level of z and points beyond the band, one stream
    levelOverall,    ///< level of z over all streams
    rebound,         ///< cumulative surprise upwards, one stream
    sideRebound,     ///< the same over the symptoms of one side
    sideDivergence,  ///< average difference between the sides, one symptom
    filling,         ///< cumulative surprise of the pooled difference, reading by reading
    slowRecovery,    ///< mean of the last three z, one stream
    slowOverall,     ///< the same over all streams
};

inline constexpr std::array allStatistics{Statistic::level,       Statistic::levelOverall,   Statistic::rebound,
                                          Statistic::sideRebound, Statistic::sideDivergence, Statistic::filling,
                                          Statistic::slowRecovery, Statistic::slowOverall};

/// `level`, `level-overall`, `rebound`, `side-rebound`, `side-divergence`, `filling`, `slow-recovery`, `slow-overall`.
std::string_view word(Statistic statistic);

/// The trigger that a statistic speaks for.
Trigger triggerOf(Statistic statistic);

/// Its threshold among the others.
double& thresholdOf(Thresholds& thresholds, Statistic statistic);
double thresholdOf(const Thresholds& thresholds, Statistic statistic);

}  // namespace ebbline::triggers
