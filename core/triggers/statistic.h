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
    sideDivergence,  ///< average difference between the sides, one symptom
    oneSideFills,    ///< likelihood ratio of one side filling with blood, reading by reading
    oneSideWorsens,  ///< likelihood ratio of one side turning worse day by day, reading by reading
    slowRecovery,    ///< mean of the last three z, one stream
    slowOverall,     ///< the same over all streams
};

inline constexpr std::array allStatistics{Statistic::level,        Statistic::levelOverall, Statistic::rebound,
                                          Statistic::sideDivergence, Statistic::oneSideFills,
                                          Statistic::oneSideWorsens, Statistic::slowRecovery,
                                          Statistic::slowOverall};

/// `level`, `level-overall`, `rebound`, `side-divergence`, `one-side-fills`, `one-side-worsens`, `slow-recovery`,
/// `slow-overall`.
std::string_view word(Statistic statistic);

/// Its threshold among the others.
double& thresholdOf(Thresholds& thresholds, Statistic statistic);
double thresholdOf(const Thresholds& thresholds, Statistic statistic);

}  // namespace ebbline::triggers
