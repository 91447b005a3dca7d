#pragma once
/// \file
/// A course as it teaches a band: a value a day and stream, and how the sides move against each other.

#include "core/bands/learn_band.h"
#include "core/triggers/judge.h"

#include <span>

namespace ebbline::rehearsal {

/// The lower median of each stream's entries of a day; entries from before the treatment count as of
/// day 0.
bands::TaughtCourse taughtBy(const triggers::CourseInput& course);

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
