#pragma once
/// \file
/// What of a page stands there. Some pages are several to the eye: a code to scan and six digits to compare are both of
/// pairing. Such a page counts as shown only in each of its states, and each only with what makes it: threads drawn, a dose counted.

#include "app/desk/desk_program.h"
#include "app/diary/diary_program.h"

#include <QStringList>

namespace ebbline::story {

/// All that there is to show: "queue", and of a page with states each of them, "pairing code".
QStringList everyDeskState();
QStringList everyPhoneState();

/// What of it the window shows now; nothing of a page whose state is none of those, or is still to be made.
QStringList statesShown(app::DeskProgram& program);
QStringList statesShown(app::DiaryProgram& program);

/// The heading over what is due now, over what is still to come, and over what is to keep, as the day's page says them.
QString dueHeading();
QString nextHeading();
QString keepHeading();

}  // namespace ebbline::story
