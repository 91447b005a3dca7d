#pragma once
/// \file
/// What stands inside an envelope: a batch of operations, or an acknowledgement.
/// Formats: docs/formats/operations.md.

#include "core/journal/operation.h"
#include "core/vault/vault.h"

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

}  // namespace ebbline::sync
