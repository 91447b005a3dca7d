#pragma once
/// \file
/// What a finding says to the practitioner: a headline, why, and the basis behind it (rule,
/// statistic, threshold), so that it can be reviewed and not only believed.

#include "core/triage/queue.h"

#include <QString>
#include <QStringList>

namespace ebbline::deskapp {

/// "Fever", "Pain rises again, left": fits in one line.
QString findingTitle(const triage::Finding& finding);
/// One sentence with the numbers: "Pain left is 5 on day 6 after a low of 2."
QString findingReason(const triage::Finding& finding);
/// "Rule rebound: statistic 5.1, threshold 4.8." Empty if there is nothing beyond the reason.
QString findingBasis(const triage::Finding& finding);

/// The titles of a row's other findings that ask for a call now or for the emergency number, each once, most
/// urgent first; the first finding of the row speaks for itself.
QStringList otherUrgentTitles(const triage::Row& row);

/// The symptom a finding speaks of; pain for a warning, because every warning rule asks after it, and for silence.
recovery::Symptom symptomOf(const triage::Finding& finding);

/// A reason of a warning, as core names it, in the desk's language: a sign's word, or a value.
QString reasonText(const std::string& reason);

}  // namespace ebbline::deskapp
