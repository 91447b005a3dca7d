#pragma once
/// \file
/// What a request is about, in a word for an operator's log: one of a short list, and nothing of what the request says.

#include "core/mailbox/wire.h"

namespace ebbline::mailbox {

/// "envelope.put", "envelopes.get", "blob.put"…; "unknown" for whatever is none of the hub's routes. docs/formats/hub.md
std::string_view routeName(const Request& request);

}  // namespace ebbline::mailbox
