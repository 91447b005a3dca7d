#pragma once
/// \file
/// A course as it teaches a band: a value a day and stream, and how the sides move against each other.

#include "core/bands/coverage.h"
#include "core/bands/learn_band.h"
#include "core/triggers/judge.h"

#include <span>

namespace ebbline::rehearsal {

/// The lower median of each stream's entries of a day; entries from before the treatment count as of
/// day 0.
bands::TaughtCourse taughtBy(const triggers::CourseInput& course);

/// Days 0 to 21 that have a score: from bands::fewestObservedDays on a course is written fully enough to teach.
int observedDays(const triggers::CourseInput& course);

/// A course as it teaches, under a name.
bands::Taught taughtAs(const recovery::CourseId& name, const triggers::CourseInput& course);

/// BLAKE2b-256 of all that a version can rest on of a course: days are medians, and movements are fitted on hours, on every
/// entry and on the practitioner's scores. Over
///
///     "ebbline course told 1" | 8 2 moment of the treatment | 4 count | the practitioner's scores |
///     4 count | for each entry with a score, in the order of its bytes: 8 2 moment | 4 count | scores
///
/// Integers big-endian; a moment is milliseconds since 1970 in UTC and the offset in minutes, both in two's complement; a
/// score is 1 symptom, 1 side, 1 points, by symptom and side. The same entry twice counts twice, as it does in a fit.
bytes::Array<32> toldBy(const triggers::CourseInput& course);

/// Movement of the difference between the sides, by maximum likelihood from bands::fewestCourses
/// courses on; below that the seed's.
bands::Movement sidesMovement(std::span<const triggers::CourseInput* const> courses, const bands::Band& seed);

/// The same of both sides together against what a band expects of them; below that many courses the
/// band's own.
bands::Movement sumsMovement(std::span<const triggers::CourseInput* const> courses, const bands::Band& band);

/// A band that was learned from these courses with that movement in place of what it was drawn towards: it can be learned
/// only once the band is, because it is told against it. The last step of learning, at the desk as with files.
Result<bands::Band> withSums(const bands::Band& band, std::span<const triggers::CourseInput* const> courses);

}  // namespace ebbline::rehearsal
