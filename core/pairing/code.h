#pragma once
/// \file
/// What a clinic shows and a phone reads: the QR payload `EBP1:...` and the typed code of
/// 24 characters. Layouts: docs/formats/pairing.md.

#include "core/clock/instant.h"
#include "core/crypto/crypto.h"

#include <string>
#include <string_view>

namespace ebbline::pairing {

using OfferId = bytes::Array<8>;
inline constexpr std::chrono::minutes offerLifetime{10};

/// Whom an offer is for; in the code, so that a phone refuses a desk's and a desk a phone's.
enum class Purpose : std::uint8_t { phone = 0, desk = 1 };

/// One invitation to pair, as the QR code carries it.
struct Offer {
    bool tls = true;                       ///< flag bit 0 clear; plain HTTP is for one machine only
    Purpose purpose = Purpose::phone;      ///< flag bit 1
    clock::Instant expires;                ///< whole seconds
    OfferId id{};
    bytes::Array<16> secret{};             ///< one-time
    crypto::SigningPublicKey clinicRoot;
    crypto::BoxPublicKey clinicEpoch;
    std::uint32_t epoch = 1;
    bytes::Array<32> hubKeyHash{};         ///< SHA-256 of the hub's SPKI, zeros without TLS
    std::string hub;                       ///< host[:port], at most 63 characters

    bool operator==(const Offer&) const = default;
};

/// `EBP1:` and base32, upper case.
std::string toQrText(const Offer& offer);

/// \returns Reason::malformed, Reason::unsupported; Reason::expired if `now` is past the expiry.
Result<Offer> fromQrText(std::string_view text, clock::Instant now);

/// The typed way in: four bytes to find the offer at the hub, nine secret bytes, a checksum.
struct TypedCode {
    bytes::Array<4> locator{};
    bytes::Array<9> secret{};
    bool operator==(const TypedCode&) const = default;
};

/// Six groups of four: `AAIS-EMYA-AEBA-GBAF-AYDQ-Q7AY`.
std::string toText(const TypedCode& code);

/// Ignores case, spaces and dashes; reads 0 as O, 1 as I and 8 as B.
/// \returns Reason::malformed if characters are missing or wrong, the checksum included.
Result<TypedCode> typedCodeFromText(std::string_view text);

/// What both sides derive from a typed code by Argon2id(secret, locator padded to 16, 3 passes,
/// 64 MiB): the offer's one-time secret, and the key that authenticates the bundle.
struct TypedSecrets {
    bytes::Array<16> offerSecret{};
    bytes::Array<32> bundleKey{};
};
Result<TypedSecrets> secretsOf(const TypedCode& code);

/// The bundle is the offer's QR text with a zero secret: the hub hands it out to whoever knows the
/// locator, and must not learn the secret itself. \returns its tag.
bytes::Array<32> bundleTag(const TypedSecrets& secrets, bytes::View bundle);

}  // namespace ebbline::pairing
