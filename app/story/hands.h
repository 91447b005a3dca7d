#pragma once
/// \file
/// What people do with the two programs, by the acts that the pages call when a finger or a mouse reaches them: so that the
/// story stands on what the view models do and not on what lies beneath them. No event is sent to a window: that is
/// what the flows tests do (tests/screens). Each looks afterwards whether it came to be.

#include "app/story/stage.h"

namespace ebbline::story {

/// Answers the questions of an entry one by one, as they are asked, and saves it.
/// \returns what it raised; Reason::invalidState if a question is not one of ours, or the diary keeps anything else than was tapped.
Result<patient::Saved> writeByHand(app::DiaryProgram& phone, const Telling& telling);

/// Answers what is due on the day's page, but for the diary, which is answered by an entry. \returns how many answers the page took.
Result<int> answerReminders(app::DiaryProgram& phone, bool done);

/// Reads the warnings that take the page, if any do. \returns Reason::invalidState if one still stands afterwards.
Done readWarning(app::DiaryProgram& phone);

/// Asks for what there is, as the person does who wants to know, and waits for the answer.
Done askByHand(app::DiaryProgram& phone);

/// What the page of entries says about where this one is.
QString stateShown(app::DiaryProgram& phone, const recovery::EntryId& entry);

/// What came of answering a row of the queue.
struct Answered {
    int calls = 0;
    int closedAtTheQueue = 0;
    int closedOnThePage = 0;
    int seen = 0;
};

/// Takes the row and calls, where anything asks for a call; closes the most urgent finding at the queue and the other loud
/// ones on the page of the course, which opens her entries; and sees the rest there.
/// \returns Reason::invalidState if an act was not kept.
Result<Answered> answerByHand(app::DeskProgram& desk, const triage::Row& row);

}  // namespace ebbline::story
