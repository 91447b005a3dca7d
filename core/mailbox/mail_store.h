#pragma once
/// \file
/// What a hub keeps. Ciphertext, identifiers, sizes and times; nothing that a person wrote.
///
/// An interface with two stores behind it: one encrypted file (embedded_store.h), and a PostgreSQL
/// server that several hubs share (platform/postgres). Every call is one transaction; a success is
/// durable. Calls come from several threads. A store that cannot be reached says
/// Reason::storageFailed; whether the call took effect is then unknown, and asking again is safe.

#include "core/clock/instant.h"
#include "core/envelope/envelope.h"
#include "core/mailbox/blobs.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace ebbline::mailbox {

using OfferId = bytes::Array<8>;

enum class Role : std::uint8_t { desk = 1, phone = 2 };

struct Device {
    envelope::DeviceId id;
    crypto::SigningPublicKey key;
    Role role = Role::phone;
    std::int64_t clinic = 0;
    bool revoked = false;
};

/// An invitation to pair, from publication until the phone has its link.
struct StoredOffer {
    OfferId id{};
    std::int64_t clinic = 0;
    bytes::Array<32> proof{};
    bytes::Array<4> locator{};
    bytes::Bytes bundle;
    bytes::Array<32> bundleTag{};
    clock::Instant expires;
    bytes::Bytes request;    ///< the phone's sealed request, empty before
    bool usedTwice = false;
    bytes::Bytes nonce;      ///< 16 bytes, empty before
    bytes::Bytes link;       ///< signed, empty before

    /// Whether it was published as the same; not whether it ends at the same time.
    bool isSame(const StoredOffer& other) const
    {
        return id == other.id && clinic == other.clinic && proof == other.proof && locator == other.locator && bundle == other.bundle
               && bundleTag == other.bundleTag;
    }
};

struct StoredEnvelope {
    envelope::DeviceId device;
    std::uint64_t sequence = 0;
    bytes::Bytes body;
};

/// Highest sequence that a reader holds of a device.
struct Position {
    envelope::DeviceId device;
    std::uint64_t sequence = 0;
};

/// What to do where no store is.
enum class IfMissing : std::uint8_t { make, refuse };

struct Quota {
    std::size_t envelopes = 1000;
    std::size_t bytes = 50u * 1024 * 1024;
    std::size_t blobs = 1000;
    std::size_t blobBytes = 200u * 1024 * 1024;
};

struct Usage {
    std::int64_t clinics = 0;
    std::int64_t devices = 0;
    std::int64_t mailboxes = 0;
    std::int64_t envelopes = 0;
    std::int64_t bytes = 0;
    std::int64_t waitingOver30Days = 0;  ///< envelopes that nobody acknowledged for so long
    std::int64_t waitingOver90Days = 0;
    std::int64_t blobs = 0;
    std::int64_t blobBytes = 0;          ///< as announced, whether they came or not
    std::int64_t waitingOver60Days = 0;  ///< at these, as at 30, diary and desk ask to call (core/sync/outlook.h)
    std::int64_t waitingOver85Days = 0;
};

/// Where something was put.
struct Written {
    envelope::MailboxId mailbox;
    std::int64_t clinic = 0;
    auto operator<=>(const Written&) const = default;
};

class MailStore {
public:
    virtual ~MailStore() = default;

    /// \returns the clinic's number; Reason::alreadyExists if this root is known.
    virtual Result<std::int64_t> addClinic(const crypto::SigningPublicKey& root, const std::string& hint) = 0;
    /// \returns Reason::notFound.
    virtual Result<std::int64_t> clinicOf(const crypto::SigningPublicKey& root) = 0;

    /// Putting a known device again is not an error; it stays revoked if it was.
    virtual Done putDevice(const Device& device) = 0;
    virtual Result<Device> device(const envelope::DeviceId& id) = 0;  ///< Reason::notFound
    /// What a desk left that nobody has acknowledged goes with it, so that a lost one holds no room and no attention;
    /// what a phone left are its patient's words, and stays. \returns Reason::notFound.
    virtual Done revokeDevice(const envelope::DeviceId& id) = 0;

    /// The same again, as after a lost answer, is not an error and does not prolong it. \returns Reason::alreadyExists.
    virtual Done putOffer(const StoredOffer& offer) = 0;
    virtual Result<StoredOffer> offer(const OfferId& id) = 0;
    virtual Result<StoredOffer> offerByLocator(const bytes::Array<4>& locator) = 0;
    /// Takes the phone's request, once. The same request again is not an error.
    /// \returns Reason::alreadyExists for another one, and remembers that it was used twice.
    virtual Done takeOffer(const OfferId& id, bytes::View request) = 0;
    /// Once. The same nonce again, as after a lost answer, is not an error. \returns Reason::alreadyExists for another one,
    /// Reason::notFound.
    virtual Done answerOffer(const OfferId& id, bytes::View nonce) = 0;
    /// Stores the link, makes the mailbox and admits the phone to it, in one transaction.
    virtual Done linkOffer(const OfferId& id, bytes::View link, const envelope::MailboxId& mailbox,
                           const Device& phone) = 0;
    virtual Done dropOffersBefore(clock::Instant instant) = 0;

    // Mailboxes. A desk may use those of its clinic, a phone its own. Every call says
    // Reason::notFound for unknown and foreign alike.

    /// \returns Reason::alreadyExists if other bytes stand there already, Reason::storageFull over
    ///          the quota. The same bytes again are not an error, over the quota neither.
    virtual Done putEnvelope(const Device& sender, const envelope::MailboxId& mailbox, std::uint64_t sequence,
                             bytes::View body, clock::Instant received, const Quota& quota) = 0;
    /// Envelopes of other devices past the positions, in order of device and sequence, until
    /// `atMostBytes` are reached (but at least one if there is one). Of one moment: what a device
    /// put before an envelope that is handed out is handed out as well, unless it was dropped.
    virtual Result<std::vector<StoredEnvelope>> envelopesAfter(const Device& reader, const envelope::MailboxId& mailbox,
                                                               const std::vector<Position>& positions,
                                                               std::size_t atMostBytes) = 0;
    /// A reader holds everything of a device up to a sequence; never goes back.
    virtual Done acknowledge(const Device& reader, const envelope::MailboxId& mailbox, const Position& position,
                             clock::Instant at) = 0;
    /// Mailboxes of the reader's clinic with envelopes that it has not acknowledged, written by whoever the mailbox was
    /// made for; in one that was made for the reader, by anybody. What desks write to a phone is no news to other desks.
    virtual Result<std::vector<envelope::MailboxId>> withNews(const Device& reader) = 0;
    /// Removes envelopes that a reader of the other side acknowledged before `acknowledgedBefore`.
    /// What nobody acknowledged is never removed.
    virtual Done dropAcknowledged(clock::Instant acknowledgedBefore) = 0;

    // Blobs, by the devices of the mailbox.

    /// Announces a blob, or asks about one that was announced: reserves its room, and says which chunks are missing.
    /// \returns Reason::alreadyExists if one of another shape has this name, Reason::storageFull over the quota.
    virtual Result<BlobStanding> beginBlob(const Device& sender, const envelope::MailboxId& mailbox, const BlobId& blob,
                                           const BlobShape& shape, clock::Instant at, const Quota& quota) = 0;
    /// \returns Reason::alreadyExists if other bytes stand there already; Reason::notFound for a blob that was not
    ///          announced, a number beyond its last, or more bytes than were announced.
    virtual Done putChunk(const Device& sender, const envelope::MailboxId& mailbox, const BlobId& blob, std::uint32_t place,
                          bytes::View body, clock::Instant at) = 0;
    /// From now on readers see it. \returns Reason::alreadyExists while chunks are missing.
    virtual Done finishBlob(const Device& sender, const envelope::MailboxId& mailbox, const BlobId& blob, clock::Instant at) = 0;
    virtual Result<bytes::Bytes> chunk(const Device& reader, const envelope::MailboxId& mailbox, const BlobId& blob,
                                       std::uint32_t place) = 0;  ///< Reason::notFound before it is finished
    virtual Result<std::vector<BlobId>> finishedBlobs(const Device& reader, const envelope::MailboxId& mailbox) = 0;
    /// A reader holds it; the first time counts. What is not there is no error.
    virtual Done acknowledgeBlob(const Device& reader, const envelope::MailboxId& mailbox, const BlobId& blob,
                                 clock::Instant at) = 0;
    /// What is not there is no error.
    virtual Done dropBlob(const Device& device, const envelope::MailboxId& mailbox, const BlobId& blob) = 0;
    /// Removes blobs acknowledged before the one, and those that nobody announced, filled or asked about since the other.
    virtual Done dropBlobs(clock::Instant acknowledgedBefore, clock::Instant touchedBefore) = 0;

    virtual Done ready() = 0;  ///< Whether the store answers.
    virtual Result<Usage> usage(clock::Instant now) = 0;

    /// Where several hubs share a store: from now on `heard` is called, on a thread of the store,
    /// when another one wrote to a mailbox; with nothing when that may have happened to any of them. A
    /// hint, late or lost at times: looking is the truth. An empty function ends it; none is called
    /// any more once this returns.
    using Heard = std::function<void(const std::optional<Written>& written)>;
    virtual void whenOthersWrite(Heard heard) = 0;
};

}  // namespace ebbline::mailbox
