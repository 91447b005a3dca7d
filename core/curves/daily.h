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

/// Days as drawn: the whole day is the calendar day, the fraction the time of that day.
double fractionalDay(const clock::Moment& treated, const clock::Moment& at);

}  // namespace ebbline::curves
