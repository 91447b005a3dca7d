#pragma once
/// \file
/// A stream's samples by day of recovery. Inside of core/curves.

#include "core/curves/curve.h"
#include "core/statistics/local_level.h"

namespace ebbline::curves {

struct DayOfScores {
    int day;
    std::size_t first;  ///< of the day's scores in Daily::scores
    std::size_t count;
    int median;         ///< the lower one: it stays on the scale
};

struct Daily {
    std::vector<DayOfScores> days;  ///< ascending
    std::vector<int> scores;        ///< day by day, ascending within a day
};

/// Samples in any order; those from before the treatment count as of day 0.
Daily dailyOf(std::span<const Sample> samples, const clock::Moment& treated);

/// Smoothed level of z at every day from the first observed to the last (local level, Kalman filter
/// and Rauch-Tung-Striebel smoother). Several scores of a day enter as their mean with a share of
/// the noise, which is the same as one after the other (tests hold it against core/statistics).
std::vector<statistics::LevelEstimate> levelsOf(const Daily& daily, const bands::Band& band, recovery::Symptom symptom);

/// z of a reading `days` after the last observed day: the level goes on from where it was, wandering, and
/// is seen through the noise of one reading. \pre days >= 0
statistics::LevelEstimate forecastOf(const statistics::LevelEstimate& last, int days, const bands::Movement& movement);

/// The normal quantile of 0.9: 80 % lie between this many standard deviations below and above.
inline constexpr double tail = 1.2815515655446004;

/// Days as drawn: the whole day is the calendar day, the fraction the time of that day.
double fractionalDay(const clock::Moment& treated, const clock::Moment& at);

}  // namespace ebbline::curves
