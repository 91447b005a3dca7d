#pragma once
/// \file
/// How the fold takes records of a treatment and openings of its course: in the order of the stamps, but that nothing holds over
/// what somebody wrote in its place. Pure; they fail at nothing.

#include "core/journal/state.h"

namespace ebbline::journal {

/// \pre `operation` is not before any that the course holds, and `body` is what it says; the body is moved from
void takeTreatment(CourseState& course, records::TreatmentRecorded& body, const Operation& operation);
void takeOpening(CourseState& course, records::CourseOpened& body, const Operation& operation);

}  // namespace ebbline::journal
