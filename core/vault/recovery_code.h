#pragma once
/// \file
/// The recovery code: 160 random bits on paper, the second way into a vault. Shown once, typed or
/// scanned when the passphrase is lost. Format: docs/formats/recovery_code.md.

#include "core/crypto/crypto.h"

#include <string>

namespace ebbline::vault {

class RecoveryCode {
public:
    static constexpr std::size_t size = 20;         ///< bytes
    static constexpr std::size_t characters = 36;   ///< 32 of the code, 4 that check it

    static RecoveryCode random();

    /// Reads what was typed: either case, with or without spaces and dashes; 0, 1 and 8 count as O, I and B.
    /// Every wrong character and every two neighbours that changed places are noticed; of other
    /// mistakes, all but one in a million.
    /// \returns Reason::notEnough for too few characters, Reason::tooLarge for too many,
    ///          Reason::malformed for one that no code has, Reason::damaged if the check characters do
    ///          not fit the rest.
    static Result<RecoveryCode> fromText(std::string_view text);

    /// Nine groups of four, e.g. for printing. The caller wipes it.
    std::string text() const;

    /// The secret itself, for the key slot.
    bytes::View view() const { return m_bytes; }

    RecoveryCode(RecoveryCode&& other) noexcept;
    RecoveryCode& operator=(RecoveryCode&& other) noexcept;
    ~RecoveryCode();

private:
    RecoveryCode() = default;
    bytes::Array<size> m_bytes{};
};

/// A group of a code to ask for, as a proof that it is on paper: 1 to 9, by chance.
int groupToAsk();

/// Whether somebody typed this group of a code, or all of it; read as RecoveryCode::fromText() reads.
/// \pre `code` as RecoveryCode::text() gives it, `group` from 1 to 9
bool saysGroup(std::string_view code, int group, std::string_view typed);

}  // namespace ebbline::vault
