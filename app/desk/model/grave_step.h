#pragma once
/// \file
/// What a grave step asks for on its page: the passphrase once more, and a second person where the clinic names one.

#include "app/desk/model/workplace.h"

#include <QStringList>

namespace ebbline::deskapp {

/// Who may stand by at a step that is for two; empty: the clinic names nobody else.
QStringList secondsOf(Workplace& workplace);

/// Gives the desk what was typed and chosen, right before the step.
/// \param passphrase  of this desk; not looked at where `asksPassphrase` is false
/// \param second      a place in secondsOf(), or -1
/// \returns what is missing or wrong, in words; empty: the step may be taken. \pre the workplace is open
QString prepareStep(Workplace& workplace, bool asksPassphrase, const QString& passphrase, bool forTwo, int second);

}  // namespace ebbline::deskapp
