#pragma once
/// \file
/// A course as the journal has it, for whoever works on scores: curves, triggers, learning.

#include "core/curves/curve.h"
#include "core/journal/state.h"
#include "core/triggers/judge.h"

#include <optional>
#include <vector>

namespace ebbline::triage {

/// Inside the band of the course's own protocol, with the forecast to its follow-up.
curves::Curve courseCurve(const journal::CourseState& course, const recovery::Stream& stream);

/// Left against right of a symptom; empty where there is not enough to say (curves::asymmetryOf).
std::optional<curves::Asymmetry> courseAsymmetry(const journal::CourseState& course, recovery::Symptom symptom);

/// When the treatment was: as sent to the phone, or as recorded; the epoch if neither is known.
clock::Moment treatedAt(const journal::CourseState& course);

/// What triggers are judged on, and bands learn from: the newest version of every entry.
triggers::CourseInput courseInput(const journal::CourseState& course);

/// The same as it stood before each entry that took something back: a correction of what is judged, or an
/// entry about a moment that lies before another one known by then. In the order in which they became known,
/// which is the fold's: the same on every device. Counted from the day, and from the scores, that held then; once more before each
/// of those was corrected. Empty for a course that was only written onward.
std::vector<triggers::CourseInput> earlierInputs(const journal::CourseState& course);

}  // namespace ebbline::triage
