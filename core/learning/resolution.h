#pragma once
/// \file
/// How long a symptom takes to go. docs/statistics/learning.md.

#include "core/learning/answer.h"
#include "core/learning/past_course.h"
#include "core/statistics/survival.h"

#include <span>

namespace ebbline::learning {

inline constexpr int resolvedPoints = 1;      ///< at or below: as good as gone
inline constexpr int lastingDays = 3;         ///< a spell that long counts even if it comes back later
inline constexpr double horizonDays = 20;     ///< of the restricted mean: the last day on which the default care plan asks

/// Between the last day above and the first day at or below it went, nobody saw when.
enum class Gap {
    middle,  ///< half-way
    later,   ///< on the day it was first seen gone: the slowest that it can have been
};

/// One symptom of one course. A day's value is that of the worse side. Gone: the first of at least two
/// observed days in a row at 1 or below which reach the end of the entries, or span three days.
/// Otherwise it was last seen on the last observed day. Unit: days of recovery.
/// Empty if it was never above 1, or not scored on two days: there was nothing to go.
std::optional<statistics::Followed> resolutionOf(const bands::TaughtCourse& days, recovery::Symptom symptom, Gap gap);

struct Median {
    double days;
    std::optional<double> low;   ///< 95 %, the times at which the curve's log-log limits pass a half
    std::optional<double> high;  ///< (Brookmeyer and Crowley, Biometrics 1982;38:29); none: not reached
};

struct Mean {
    double days;      ///< with the symptom, up to the horizon
    double variance;  ///< Greenwood's
    double low;       ///< 95 %, within 0..horizon
    double high;
};

struct Times {
    statistics::SurvivalCurve curve;
    std::optional<Median> median;        ///< none: more than half still had it when last seen
    std::optional<Median> medianLater;   ///< the same with Gap::later: how much the gaps matter
    Answer<Mean> mean;
};

struct Resolution {
    recovery::Symptom symptom = recovery::Symptom::pain;
    long courses = 0;   ///< with the symptom above 1 at some time
    long resolved = 0;  ///< of them
    long never = 0;     ///< never above 1, or not scored on two days: not counted
    Answer<Times> times = std::unexpected(NotEnough{Lack::courses, 0, fewestCourses});
};

Resolution resolutionOf(std::span<const PastCourse> courses, recovery::Symptom symptom);

/// For comparisons and benches: those who had it.
std::vector<statistics::Followed> followed(std::span<const PastCourse> courses, recovery::Symptom symptom, Gap gap);

/// Restricted mean to the horizon with its interval.
Answer<Mean> meanOf(const statistics::SurvivalCurve& curve);

}  // namespace ebbline::learning
