#pragma once
/// \file
/// The messages of pairing and the six digits that both people compare. The desk sends its nonce
/// only after it holds the phone's keys, so nobody can search for keys that give the same digits.

#include "core/envelope/envelope.h"
#include "core/pairing/code.h"

namespace ebbline::pairing {

/// From the phone, sealed to the clinic epoch key.
struct EnrolRequest {
    OfferId offer{};
    crypto::SigningPublicKey signing;
    crypto::BoxPublicKey box;
    bool operator==(const EnrolRequest&) const = default;
};

/// Signed by the phone's new key, proves knowledge of the offer's secret, sealed to the clinic.
bytes::Bytes sealEnrolRequest(const EnrolRequest& request, const bytes::Array<16>& secret,
                              const crypto::SigningKey& key, const crypto::BoxPublicKey& clinicEpoch);

/// \returns Reason::forged if proof or signature does not hold, Reason::malformed, Reason::wrongKey.
Result<EnrolRequest> openEnrolRequest(bytes::View sealed, const Offer& offer, const crypto::BoxKey& clinicEpoch);

/// What the hub stores of an offer: BLAKE2b-256("EB-offer" and the secret).
bytes::Array<32> offerProof(const bytes::Array<16>& secret);

/// Six digits as text, "042917".
std::string confirmationNumber(const crypto::SigningPublicKey& signing, const crypto::BoxPublicKey& box,
                               const bytes::Array<16>& nonce);

/// From the desk to the phone after both saw the same digits: mailbox and desk key, signed by the root.
struct PatientLink {
    envelope::MailboxId mailbox;
    crypto::SigningPublicKey phone;
    crypto::SigningPublicKey desk;
    std::string clinicName;
    bool operator==(const PatientLink&) const = default;
};
bytes::Bytes signPatientLink(const PatientLink& link, const crypto::SigningKey& root);
/// \returns Reason::forged, Reason::malformed.
Result<PatientLink> openPatientLink(bytes::View signedLink, const crypto::SigningPublicKey& root);

/// From an owner's desk to a new one, sealed to it: everything that makes it one of the clinic's.
struct DeskLink {
    envelope::MailboxId mailbox;      ///< of the channel between the two
    crypto::SigningPublicKey newDesk;
    crypto::SigningPublicKey desk;    ///< the owner's own
    crypto::BoxPublicKey box;
    std::uint32_t epoch = 1;
    crypto::BoxKey epochKey;
    bytes::Bytes rootSeed;            ///< empty, or 32 bytes: the new desk becomes an owner as well
};
bytes::Bytes signDeskLink(const DeskLink& link, const crypto::SigningKey& root);
/// \returns Reason::forged, Reason::malformed.
Result<DeskLink> openDeskLink(bytes::View signedLink, const crypto::SigningPublicKey& root);

}  // namespace ebbline::pairing
