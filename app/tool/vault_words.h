#pragma once
/// \file
/// What the tool says about a vault: one sentence a fault, and what a refusal means.

#include "core/vault/inspection.h"

namespace ebbline::tool {

/// The fault's name for JSON.
const char* word(vault::Fault::Kind kind);

/// What is wrong and what to do about it, in one or two sentences.
std::string sentence(const vault::Fault& fault);

/// Why a vault or backup did not open.
std::string sentence(const Error& error);

}  // namespace ebbline::tool
