#pragma once
/// \file
/// What differs between two protocols, in words.

#include "core/triggers/protocol.h"

#include <QList>
#include <QStringList>

namespace ebbline::deskapp {

/// A line for each instruction that is new, other or gone, and for the day of the follow-up.
QStringList planChanges(const aftercare::CarePlan& was, const aftercare::CarePlan& now);

/// A line for each number of the rules that is another one.
QStringList ruleChanges(const triggers::Thresholds& was, const triggers::Thresholds& now);

/// Rules that are not alike, beside each other: rule, as it was, as it is.
QList<QStringList> rulesBeside(const triggers::Thresholds& was, const triggers::Thresholds& now);

}  // namespace ebbline::deskapp
