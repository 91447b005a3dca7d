#pragma once
/// \file
/// A protocol as a JSON file: docs/formats/protocol.md. The same protocol is the same bytes.

#include "core/triggers/protocol.h"

#include <string>

namespace ebbline::tool {

inline constexpr std::size_t maximumProtocolBytes = std::size_t{4} << 20;

std::string protocolText(const triggers::Protocol& protocol);

/// \returns Reason::malformed, Reason::unsupported (another format version), Reason::outOfRange or
///          Reason::tooLarge, naming the field. A field that is missing or unknown is refused: a
///          misspelt threshold that is silently left at its default could hide an alert.
Result<triggers::Protocol> protocolFromText(std::string_view text);

}  // namespace ebbline::tool
