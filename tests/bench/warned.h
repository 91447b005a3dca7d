#pragma once
/// \file
/// When the warning rules speak up in an invented course: its scores, the signs that were ticked and what was measured.

#include "core/rehearsal/invented_course.h"

namespace ebbline::bench {

/// The moment of the first entry, at or after `from`, about which a warning rule says something at least as urgent as
/// `urgency`; nothing if there is none.
std::optional<clock::Moment> firstWarning(const rehearsal::KnownCourse& course, recovery::Urgency urgency, const clock::Moment& from);

/// A warning rule asks for a call, or for more: at one entry at least.
bool warns(const rehearsal::KnownCourse& course);

}  // namespace ebbline::bench
