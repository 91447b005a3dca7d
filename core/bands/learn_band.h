#pragma once
/// \file
/// A band from courses, drawn towards the seed while they are few.
///
/// Counts of scores by day, smoothed over the neighbouring days (1/4, 1/2, 1/4), are added to the
/// seed as if that stood for `seedCourses` courses (a Dirichlet prior). Both sides of a course
/// together weigh as one course: the unit of information is the patient. docs/statistics/band.md.

#include "core/bands/band.h"

#include <span>

namespace ebbline::bands {

/// A day's value of one stream: the lower median of its entries, so that it stays on the scale.
struct DayScore {
    recovery::Symptom symptom;
    recovery::Side side;
    int day;     ///< of recovery; days outside 0..lastDay are left out
    int points;  ///< 0..10
};

/// The days of one course, any order, each stream once a day.
using TaughtCourse = std::vector<DayScore>;

/// Patient-equivalents that the seed stands for: a choice of ours (docs/statistics/band.md).
inline constexpr double seedCourses = 30;

/// The distributions alone. Without a course they are the seed's, smoothed by what is added to every answer.
/// \returns Reason::outOfRange for points outside 0..10.
Result<Band::Table> learnTable(std::span<const TaughtCourse> courses, const Band& seed);

/// `provenance.courses` is set to the number of courses. Movements are fitted by maximum likelihood
/// from `fewestCourses` courses on, before that they stay the seed's; `sides` is taken as given.
/// \returns Reason::notEnough without a course, Reason::outOfRange for points outside 0..10.
Result<Band> learnBand(std::span<const TaughtCourse> courses, const Band& seed, Provenance provenance,
                       const Movement& sides);

/// One patient's series: (days, value) in time order.
using Series = std::vector<std::pair<double, double>>;

/// Maximum likelihood over the series of a cohort, by a coordinate search from `from`; at most
/// `mostSeries` series are looked at, spread evenly. Without a series: `from`.
Movement fitMovement(std::span<const Series> cohort, const Movement& from);
inline constexpr std::size_t mostSeries = 400;

}  // namespace ebbline::bands
