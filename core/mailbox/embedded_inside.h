#pragma once
/// \file
/// The embedded store's class; inside of core/mailbox only. Clinics, devices and offers are in
/// embedded_store.cpp, what a mailbox holds in embedded_envelopes.cpp and embedded_blobs.cpp.

#include "core/mailbox/batches.h"
#include "core/mailbox/mail_store.h"
#include "core/store/database.h"

#include <mutex>

namespace ebbline::mailbox {

inline std::int64_t millis(clock::Instant instant) { return instant.time_since_epoch().count(); }

template <std::size_t N>
bytes::Array<N> arrayOf(const bytes::Bytes& blob)
{
    bytes::Array<N> out{};
    std::copy_n(blob.begin(), std::min(blob.size(), N), out.begin());
    return out;
}

class EmbeddedStore final : public MailStore {
public:
    /// Two connections to the same file: `reading` for what every request asks for, so that it does not wait behind a commit.
    EmbeddedStore(store::Database database, store::Database reading) : m_database(std::move(database)), m_reading(std::move(reading)) {}

    Result<std::int64_t> addClinic(const crypto::SigningPublicKey& root, const std::string& hint) override;
    Result<std::int64_t> clinicOf(const crypto::SigningPublicKey& root) override;
    Done putDevice(const Device& device) override;
    Result<Device> device(const envelope::DeviceId& id) override;
    Done revokeDevice(const envelope::DeviceId& id) override;
    Done putOffer(const StoredOffer& offer) override;
    Result<StoredOffer> offer(const OfferId& id) override;
    Result<StoredOffer> offerByLocator(const bytes::Array<4>& locator) override;
    Done takeOffer(const OfferId& id, bytes::View request) override;
    Done answerOffer(const OfferId& id, bytes::View nonce) override;
    Done linkOffer(const OfferId& id, bytes::View link, const envelope::MailboxId& mailbox, const Device& phone) override;
    Done dropOffersBefore(clock::Instant instant) override;
    Done putEnvelope(const Device& sender, const envelope::MailboxId& mailbox, std::uint64_t sequence, bytes::View body,
                     clock::Instant received, const Quota& quota) override;
    Result<std::vector<StoredEnvelope>> envelopesAfter(const Device& reader, const envelope::MailboxId& mailbox,
                                                       const std::vector<Position>& positions,
                                                       std::size_t atMostBytes) override;
    Done acknowledge(const Device& reader, const envelope::MailboxId& mailbox, const Position& position,
                     clock::Instant at) override;
    Result<std::vector<envelope::MailboxId>> withNews(const Device& reader) override;
    Done dropAcknowledged(clock::Instant acknowledgedBefore) override;
    Result<BlobStanding> beginBlob(const Device& sender, const envelope::MailboxId& mailbox, const BlobId& blob,
                                   const BlobShape& shape, clock::Instant at, const Quota& quota) override;
    Done putChunk(const Device& sender, const envelope::MailboxId& mailbox, const BlobId& blob, std::uint32_t place,
                  bytes::View body, clock::Instant at) override;
    Done finishBlob(const Device& sender, const envelope::MailboxId& mailbox, const BlobId& blob, clock::Instant at) override;
    Result<bytes::Bytes> chunk(const Device& reader, const envelope::MailboxId& mailbox, const BlobId& blob,
                               std::uint32_t place) override;
    Result<std::vector<BlobId>> finishedBlobs(const Device& reader, const envelope::MailboxId& mailbox) override;
    Done acknowledgeBlob(const Device& reader, const envelope::MailboxId& mailbox, const BlobId& blob, clock::Instant at) override;
    Done dropBlob(const Device& device, const envelope::MailboxId& mailbox, const BlobId& blob) override;
    Done dropBlobs(clock::Instant acknowledgedBefore, clock::Instant touchedBefore) override;
    Done ready() override;
    Result<Usage> usage(clock::Instant now) override;
    void whenOthersWrite(Heard heard) override;

private:
    /// An envelope on its way into a batch, and what became of it.
    struct Put {
        const Device& sender;
        const envelope::MailboxId& mailbox;
        std::uint64_t sequence;
        bytes::View body;
        clock::Instant received;
        const Quota& quota;
        Done outcome{};
    };
    Done putAll(const std::vector<Put*>& puts);
    /// An error of the file ends the batch; what the rules say is the outcome of this one alone.
    Result<Done> putOne(const Put& put);

    /// Within a transaction: removes envelopes and counts them off their mailboxes. `which` is SQL of ours.
    Done drop(const std::string& which, const std::function<void(store::Statement&)>& bind);
    Done dropUnread(const envelope::DeviceId& device);
    Result<BlobStanding> standingOf(const envelope::MailboxId& mailbox, const BlobId& blob);
    /// Blobs with their chunks and their room. \pre inside of a transaction
    Done dropWhere(const std::string& which, const std::function<void(store::Statement&)>& bind);
    Done mayUse(const envelope::MailboxId& mailbox, const Device& device) { return mayUse(m_database, mailbox, device); }
    static Done mayUse(store::Database& database, const envelope::MailboxId& mailbox, const Device& device);
    Done run(std::string_view sql, const std::function<void(store::Statement&)>& bind);
    /// The first column of the row with this key.
    Result<std::int64_t> find(std::string_view sql, bytes::View key);
    Done insertDevice(const Device& device);
    Result<StoredOffer> readOffer(const std::string& where, bytes::View key);

    std::mutex m_mutex;  ///< of m_database
    store::Database m_database;
    std::mutex m_readingMutex;  ///< of m_reading
    store::Database m_reading;  ///< changes nothing; sees all that is committed when a statement begins
    Batches<Put> m_puts;
};

}  // namespace ebbline::mailbox
