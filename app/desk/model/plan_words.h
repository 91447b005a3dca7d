#pragma once
/// \file
/// What was planned beside what was done, in words; which thread became which is said by core/recovery/plan.h.

#include "core/recovery/treatment.h"

#include <QString>
#include <QStringList>

#include <span>

namespace ebbline::deskapp {

/// "Planned: 6. Placed: 5. Left out: 1."
QString planSentence(std::span<const recovery::Placement> planned, std::span<const recovery::Placement> done);
/// The same, and a line for each planned thread with what became of it; empty without a plan.
QStringList planLines(const recovery::Treatment& treatment);

}  // namespace ebbline::deskapp
