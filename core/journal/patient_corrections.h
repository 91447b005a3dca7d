#pragma once
/// \file
/// What a correction of a patient changes; inside of core/journal only. Rule: docs/decisions/0050-a-correction-changes-what-it-changed.md.

#include "core/journal/state.h"

namespace ebbline::journal {

/// `operation` writes `body` where `holds` holds after `corrections` of the same patient. \returns what holds then, in `after`;
/// who did it is for the caller to add.
PatientCorrection correctionOf(const Operation& operation, const records::PatientRegistered& body, const records::PatientRegistered& holds,
                               const std::vector<PatientCorrection>& corrections);

}  // namespace ebbline::journal
