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

/// Whether somebody may have judged a version of an entry by that count: it is not stamped later; or, whatever the clocks say, the
/// patient was shown a warning of the entry, or somebody had opened the version by then. Every device answers alike.
bool mayHaveCounted(const journal::CourseState& course, const journal::FormerCount& count, const journal::Version<recovery::Entry>& version);

/// What triggers are judged on, and bands learn from: the newest version of every entry.
triggers::CourseInput courseInput(const journal::CourseState& course);

/// The same as it stood before each entry that took something back: a correction of what is judged, or an
/// entry about a moment that lies before another one known by then. In the order in which they became known,
/// which is the fold's: the same on every device. Counted from the day, and from the scores, that hold; then by each former count, up to
/// what it may have counted, with what stood there in the end. Empty for a course that was only written onward.
std::vector<triggers::CourseInput> earlierInputs(const journal::CourseState& course);

}  // namespace ebbline::triage
