#pragma once
/// \file
/// What was corrected of the record of a treatment, in words; which parts differ is said by core/recovery/treatment_changes.h.

#include "app/desk/model/course_rows.h"

namespace ebbline::deskapp {

/// A line for each part that differs: "Thread 2: lot TH-2; until then lot TH-1".
QStringList changeLines(const recovery::Treatment& former, const recovery::Treatment& now);
/// Each record that stands in place of another, the newest first: when, who and why, and below it what stood there until then.
QStringList treatmentCorrectionLines(const journal::CourseState& course, const Stamp& stamp);
/// Two desks recorded it without knowing of each other; empty: they did not, or somebody has corrected it since.
QString treatmentCrossedText(const journal::CourseState& course);
/// The course is counted by something else than its record says; empty: it is not.
QString countedOtherwiseText(const journal::CourseState& course);
/// What a phone gets of it once this is recorded, and what it keeps.
QString phoneKeepsText(const journal::CourseState& course, const recovery::Treatment& corrected);

}  // namespace ebbline::deskapp
