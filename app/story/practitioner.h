#pragma once
/// \file
/// What the practitioner does at the desk on the day of the treatment and at the follow-up, by the acts that the pages call, as
/// hands.h says of the others. Each looks afterwards whether it came to be.

#include "app/story/stage.h"

namespace ebbline::story {

/// Opens the page of a treatment, and registers who is treated.
Done registerPatient(app::DeskProgram& desk, const Patient& patient);

/// The threads, of which one side is drawn and the other mirrored; what was injected, with the weight; what was said, agreed
/// and seen: each on its step of the page, kept as a draft and not yet recorded.
/// \returns Reason::invalidState if anything else stands there afterwards than was treated.
Done writeThreads(app::DeskProgram& desk, const recovery::Treatment& treated);
Done writeAnaesthetic(app::DeskProgram& desk, const recovery::Treatment& treated);
Done writeCare(app::DeskProgram& desk, const recovery::Treatment& treated);

/// Records what was written. \returns its course, for which the page of pairing stands open.
Result<recovery::CourseId> recordTreatment(app::DeskProgram& desk, const recovery::Treatment& treated);

/// Opens the page of the follow-up and answers all that it asks; not yet recorded.
Done writeFollowUp(app::DeskProgram& desk, const recovery::CourseId& course, const FollowUp& found);
/// Records what was written there.
Done recordFollowUp(app::DeskProgram& desk, const recovery::CourseId& course, const FollowUp& found);

}  // namespace ebbline::story
