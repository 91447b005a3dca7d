#pragma once
/// \file
/// Who may get a body.

#include "core/records/bodies.h"

namespace ebbline::records {

/// Whether a kind goes between a phone and its clinic. All others stay among the clinic's desks: what its people note
/// about findings, and whatever else is not the patient's to get.
bool goesBetween(Kind kind);

}  // namespace ebbline::records
