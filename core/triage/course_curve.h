#pragma once
/// \file
/// The curve of one stream, from a course as the journal has it.

#include "core/curves/curve.h"
#include "core/journal/state.h"

namespace ebbline::triage {

/// Inside the band of the course's own protocol, with the forecast to its follow-up.
curves::Curve courseCurve(const journal::CourseState& course, const recovery::Stream& stream);

/// When the treatment was: as sent to the phone, or as recorded; the epoch if neither is known.
clock::Moment treatedAt(const journal::CourseState& course);

}  // namespace ebbline::triage
