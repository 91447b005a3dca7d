#pragma once
/// \file
/// Local-level model: a level that wanders, seen through noise.
///
///     x_t = level_t + e_t,  e ~ N(0, observation);   level_(t+1) = level_t + w_t,  w ~ N(0, drift)
///
/// Kalman filter and Rauch-Tung-Striebel smoother, with missing steps (the variance grows) and
/// several observations in one step (several updates).
/// Source: J. Durbin, S. J. Koopman, "Time Series Analysis by State Space Methods", 2nd ed.,
/// Oxford 2012, chapter 2.

#include "core/result/result.h"

#include <span>
#include <vector>

namespace ebbline::statistics {

struct LocalLevelModel {
    double observation;   ///< variance of one observation, > 0
    double drift;         ///< variance of one step of the level, >= 0
    double startMean;     ///< of the level before anything was seen
    double startVariance; ///< >= 0
};

/// Mean and variance of the level.
struct LevelEstimate {
    double mean;
    double variance;
};

class LocalLevelFilter {
public:
    /// \returns Reason::outOfRange naming the field.
    static Result<LocalLevelFilter> create(const LocalLevelModel& model);

    /// One observation at the present step. \returns the standardised innovation
    /// (observation - prediction) / sqrt(prediction variance + observation variance);
    /// Reason::notFinite, and then nothing has changed.
    Result<double> observe(double value);

    /// `steps` further; nothing is seen. \pre steps >= 0
    void advance(int steps = 1) noexcept;

    LevelEstimate level() const noexcept { return m_level; }

    /// Of an observation `steps` ahead.
    LevelEstimate forecast(int steps) const noexcept;

private:
    explicit LocalLevelFilter(const LocalLevelModel& model) noexcept
        : m_model(model), m_level{model.startMean, model.startVariance}
    {
    }
    LocalLevelModel m_model;
    LevelEstimate m_level;
};

/// Smoothed level at every step; an empty inner list is a missing step.
/// \returns Reason::outOfRange or Reason::notFinite.
Result<std::vector<LevelEstimate>> smooth(const LocalLevelModel& model, std::span<const std::vector<double>> steps);

}  // namespace ebbline::statistics
