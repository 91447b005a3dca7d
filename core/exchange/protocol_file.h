#pragma once
/// \file
/// A protocol as a JSON file, for the tool and for a colleague's desk: docs/formats/protocol.md. The same protocol, written
/// at the same moment by the same program, is the same bytes. No patient stands in it.

#include "core/clock/instant.h"
#include "core/triggers/protocol.h"

#include <optional>
#include <string>

namespace ebbline::exchange {

inline constexpr std::size_t maximumProtocolBytes = std::size_t{4} << 20;

struct ProtocolFile {
    triggers::Protocol protocol;
    std::string program{};                   ///< name and version of the one that wrote it; empty: it does not say
    std::optional<clock::Moment> written{};  ///< by that program's clock; its zone is not told. Empty: it does not say
    bool operator==(const ProtocolFile&) const = default;
};

/// \pre the program is named and the moment given: formats of before lacked them, and are read only
std::string protocolText(const ProtocolFile& file);

/// \returns Reason::malformed, Reason::unsupported (another format version), Reason::outOfRange or
///          Reason::tooLarge, naming the field. A field that is missing or unknown is refused: a
///          misspelt threshold that is silently left at its default could hide an alert.
Result<ProtocolFile> protocolFromText(std::string_view text);

}  // namespace ebbline::exchange
