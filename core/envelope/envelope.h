#pragma once
/// \file
/// The sealed message on the wire, version 1. Layout to the byte: docs/formats/envelope.md.
///
/// Encrypt, then sign: whoever holds the sender's public key can reject garbage before any
/// decryption. Each sender numbers its envelopes in a mailbox from 1 without gaps and chains
/// them by hash, so a missing, swapped or forked one shows.

#include "core/crypto/crypto.h"

#include <vector>

namespace ebbline::envelope {

using bytes::Array;
using bytes::Bytes;
using bytes::View;
using DeviceId = bytes::Id<struct DeviceTag>;
using MailboxId = bytes::Id<struct MailboxTag>;
using Hash = Array<32>;

/// BLAKE2b-128 of the device's Ed25519 public key.
DeviceId deviceIdOf(const crypto::SigningPublicKey& key);

/// Stored and sent: never renumber.
enum class Kind : std::uint8_t { operations = 1, acknowledgement = 2, statement = 3, blobManifest = 4, heartbeat = 5 };

inline constexpr std::size_t maximumCiphertext = 262'144;
inline constexpr std::size_t maximumEnvelope = 144 + 8 * 96 + 4 + maximumCiphertext + 64;
inline constexpr std::size_t maximumRecipients = 8;

/// What stands in front, readable by the hub.
struct Header {
    Kind kind = Kind::operations;
    MailboxId mailbox;
    DeviceId sender;
    std::uint64_t sequence = 0;       ///< from 1
    Hash previous{};                  ///< hash of the envelope before, zeros at 1
    std::uint32_t recipientEpoch = 0;
    bool operator==(const Header&) const = default;
};

/// Seals `plaintext` to the recipients and signs it with the sender's key.
/// \pre header.sender belongs to `sender`.
/// \returns Reason::tooLarge over maximumCiphertext after padding, Reason::outOfRange for no or
///          more than eight recipients or sequence 0.
Result<Bytes> seal(const Header& header, const crypto::SigningKey& sender,
                   const std::vector<crypto::BoxPublicKey>& recipients, View plaintext);

/// Reads the header and checks form and lengths only; trusts nothing.
/// \returns Reason::malformed, Reason::unsupported.
Result<Header> peek(View envelope);

/// Checks form and the sender's signature. \returns as peek(), or Reason::forged.
Result<Header> verify(View envelope, const crypto::SigningPublicKey& sender);

struct Opened {
    Header header;
    Bytes plaintext;
};

/// verify(), then unwrap, commitment, decryption and unpadding.
/// \returns as verify(); Reason::wrongKey if it is not sealed to `recipient`.
Result<Opened> open(View envelope, const crypto::SigningPublicKey& sender, const crypto::BoxKey& recipient);

/// Chain hash of a whole envelope, BLAKE2b-256.
Hash hashOf(View envelope);

}  // namespace ebbline::envelope
