#pragma once
/// \file
/// A stream's samples by day of recovery. Inside of core/curves.

#include "core/curves/curve.h"
#include "core/statistics/local_level.h"
#include "core/statistics/ordinal_level.h"

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

/// How the patient keeps her place in the band, as an ordinal level (core/statistics/ordinal_level.h):
/// the band says that patients do not drift apart, so what the level gains a day by drift it loses by
/// returning towards the middle, kept^2 start + drift = start; share = start / (start + noise).
statistics::OrdinalLevelModel placeOf(const bands::Movement& movement);

/// How likely each score of a reading on a day is, from the scores up to the last observed day.
/// \pre the day is not before that one; something was observed
bands::Distribution scoresExpected(const Daily& daily, const bands::Band& band, recovery::Symptom symptom, int day);

/// The normal quantile of 0.9: 80 % lie between this many standard deviations below and above.
inline constexpr double tail = 1.2815515655446004;

/// Days as drawn: the whole day is the calendar day, the fraction the time of that day.
double fractionalDay(const clock::Moment& treated, const clock::Moment& at);

}  // namespace ebbline::curves
