#pragma once
/// \file
/// What to ask on the phone, by what was found: short, closed questions in the order in which they matter.
/// Common practice, no source; the clinician decides. docs/clinical/call_script.md.

#include "core/triage/queue.h"

#include <QStringList>

namespace ebbline::deskapp {

/// For the open findings of a course, most urgent first; each question once, at most seven.
QStringList callScript(const std::vector<triage::Finding>& findings);

}  // namespace ebbline::deskapp
