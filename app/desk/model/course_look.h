#pragma once
/// \file
/// What is new in a course since the person at the desk last looked at it, and a course as a file.

#include "app/desk/model/workplace.h"
#include "app/desk/sheet/paper.h"

namespace ebbline::deskapp {

/// "Since you last looked, yesterday 14:05: 2 entries, 1 finding, called by …", that nothing is new, or that
/// she has not looked before. Empty if nobody is named at the desk.
QString newsSinceLook(Workplace& workplace, const recovery::CourseId& course);
/// Remembers this moment as the last look of the person at the desk; on this computer alone.
Done rememberLook(Workplace& workplace, const recovery::CourseId& course);

/// "Expected at the follow-up, day 21: pain left 0 (0 to 2), …": of every symptom for which enough was written.
QString forecastText(Workplace& workplace, const recovery::CourseId& course);

/// Who, what was done, findings with acts, entries and messages, for paper or as text.
Paper coursePaper(Workplace& workplace, const recovery::CourseId& course);
/// The open table of scores (docs/formats/tables.md).
std::string courseTable(Workplace& workplace, const recovery::CourseId& course);

}  // namespace ebbline::deskapp
