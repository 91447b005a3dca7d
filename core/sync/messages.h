#pragma once
/// \file
/// What stands inside an envelope: a batch of operations, an acknowledgement, or a statement.
/// Formats: docs/formats/operations.md.

#include "core/journal/operation.h"
#include "core/vault/vault.h"

#include <span>
#include <variant>

namespace ebbline::sync {

inline constexpr std::size_t maximumBatch = 190 * 1024;   ///< bytes before compression
inline constexpr std::size_t maximumUnpacked = 400 * 1024;
inline constexpr std::size_t mostInBatch = 3000;          ///< operations; a reader takes 4000

/// Operations as one compressed message.
bytes::Bytes packOperations(const std::vector<journal::Operation>& operations);

/// \returns Reason::malformed, Reason::tooLarge: never unpacks more than maximumUnpacked bytes.
Result<std::vector<journal::Operation>> unpackOperations(bytes::View message);

/// Inside a signed envelope: what the sender holds of the reader, and when it said so.
struct Acknowledgement {
    envelope::DeviceId of;       ///< whose envelopes
    vault::Cursor held;          ///< up to here without a gap
    clock::Instant at;           ///< by the sender's clock
    bool operator==(const Acknowledgement& other) const
    {
        return of == other.of && held.sequence == other.held.sequence && held.hash == other.held.hash && at == other.at;
    }
};

bytes::Bytes pack(const Acknowledgement& acknowledgement);
Result<Acknowledgement> unpackAcknowledgement(bytes::View message);

/// From desk to desk: what opens what patients seal to this epoch.
struct EpochSecret {
    std::uint32_t number = 0;
    crypto::BoxKey key;
};
/// A statement signed by the clinic's root (core/pairing/statement.h), as it is.
struct SignedStatement {
    bytes::Bytes signedBytes;
};
/// From desk to desk: how far each phone's chain goes at the sender.
using Heads = std::vector<vault::Vault::Head>;
inline constexpr std::size_t mostHeads = 2500;

/// What is sealed past `held` to a key that was destroyed here: seal it anew.
struct AskAgain {
    envelope::DeviceId of;
    std::uint64_t held = 0;
};
/// The sender's own word that these envelopes of it bring nothing: what they carried follows, sealed anew.
struct SealedAgain {
    std::uint64_t first = 0;
    std::uint64_t last = 0;
};
/// From a phone that was replaced: what it holds that the clinic does not.
struct LeftBehind {
    std::uint32_t entries = 0;    ///< versions of entries
    std::uint32_t messages = 0;
    std::uint32_t photos = 0;
    std::uint32_t others = 0;     ///< answers to reminders, warnings that were shown, and the like
    clock::Instant first{};       ///< when the oldest and the newest of them were written, by the phone's clock
    clock::Instant last{};
    bool isNothing() const { return entries + messages + photos + others == 0; }
    bool operator==(const LeftBehind&) const = default;
};
/// From desk to desk: the sender knows its own chain only up to here, and was shown that the reader holds more of it.
struct OlderCopy {
    std::uint64_t own = 0;
};
using StatementMessage = std::variant<SignedStatement, EpochSecret, Heads, AskAgain, SealedAgain, LeftBehind, OlderCopy>;

/// Under these names a vault keeps what it, as a replaced phone, left behind; and what such a phone said of itself.
std::string leftBehindName(const envelope::MailboxId& mailbox);
Result<std::optional<LeftBehind>> leftBehind(const vault::Vault& vault, const envelope::MailboxId& mailbox);

bytes::Bytes packSigned(bytes::View signedStatement);
bytes::Bytes pack(const EpochSecret& secret);
bytes::Bytes pack(std::span<const vault::Vault::Head> heads);  ///< \pre at most mostHeads
bytes::Bytes pack(const AskAgain& ask);
bytes::Bytes pack(const SealedAgain& again);
bytes::Bytes pack(const LeftBehind& left);
bytes::Bytes pack(const OlderCopy& older);
/// \returns Reason::malformed, Reason::unsupported.
Result<StatementMessage> unpackStatement(bytes::View message);

}  // namespace ebbline::sync
