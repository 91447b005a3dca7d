#pragma once
/// \file
/// A clinic's word to its hub that a device is over: lost, stolen, given away or replaced. Signed by the clinic's root, so
/// that any desk may carry it and nobody else can say it. Layout: docs/formats/statements.md, kind 3.

#include "core/clock/instant.h"
#include "core/envelope/envelope.h"

namespace ebbline::mailbox {

struct DeviceEnded {
    envelope::DeviceId device;
    clock::Instant at{};  ///< when the clinic said so, by its own clock; for people only
    bool operator==(const DeviceEnded&) const = default;
};

inline constexpr std::size_t endingSize = 4 + 1 + 16 + 8 + 64;
inline constexpr std::size_t mostEndings = 500;  ///< in one request; our own choice

bytes::Bytes signEnding(const DeviceEnded& ended, const crypto::SigningKey& root);

/// \returns Reason::forged if it is not signed by this root, Reason::malformed for anything else than an ending.
Result<DeviceEnded> openEnding(bytes::View signedEnding, const crypto::SigningPublicKey& root);

}  // namespace ebbline::mailbox
