#pragma once
/// \file
/// Who was at a finding or a row last, and what they did, as a line; calls that were about no finding.

#include "app/desk/model/course_rows.h"

namespace ebbline::deskapp {

/// "Taken by Dr Ito, Today 14:05", "Dr Ito spoke with her, Today 14:05". \pre one of triage::newestAct()
QString lastActText(const records::FindingActed& act, const clock::Moment& now);

/// Who was at a row last, and who has taken it where that is another act. `lapsed`: the last act is said elsewhere (lapsedText()).
/// \pre the row has a last act
QString onItText(const triage::Row& row, bool lapsed, const clock::Moment& now);

/// "Taken by Dr Ito 2 h ago, nothing noted since": of an act that covers a row no more.
QString lapsedText(const records::FindingActed& act, const clock::Moment& now);

/// A call that was about no finding: "She rang, and Dr Ito answered, Today 14:05. May I wash my hair?"; who took it back, if somebody did.
QString callText(const journal::CourseState& course, const journal::Version<records::CallNoted>& call, const Stamp& stamp);

/// What people did beside the findings of a course: calls about none, and acts on a silence that ended since. Oldest first.
QStringList callLines(const desk::CourseView& view, const Stamp& stamp);

}  // namespace ebbline::deskapp
