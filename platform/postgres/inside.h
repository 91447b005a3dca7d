#pragma once
/// \file
/// The store's class; inside of platform/postgres only. Clinics, devices and offers are in
/// postgres_store.cpp, what a mailbox holds in postgres_envelopes.cpp and
/// postgres_blobs.cpp.

#include "core/mailbox/batches.h"
#include "platform/postgres/listener.h"
#include "platform/postgres/pool.h"

namespace ebbline::postgres {

using namespace mailbox;

class PostgresStore final : public MailStore {
public:
    explicit PostgresStore(const Settings& settings) : m_pool(settings), m_settings(settings) {}

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

    Pool& pool() { return m_pool; }

private:
    /// An envelope on its way into a batch, and what became of it.
    struct Put {
        const envelope::MailboxId* mailbox;
        Arguments arguments;
        Done outcome{};
    };
    Done putAll(std::vector<Put*> puts);

    Result<Rows> ask(const std::string& sql, const Arguments& arguments = {});
    /// A function that answers with a number.
    Done call(const std::string& sql, const Arguments& arguments);
    /// A statement that may see what `setting` (a call of as_clinic, as_named or as_whole) opens to it.
    Result<Rows> askAs(const std::string& setting, const Arguments& what, const std::string& sql, const Arguments& arguments);
    Result<StoredOffer> readOffer(const std::string& where, bytes::View key);

    Pool m_pool;
    Settings m_settings;
    Batches<Put> m_puts;
    std::mutex m_listenerMutex;
    std::unique_ptr<Listener> m_listener;
};

/// What a function's number means.
Done outcomeOf(std::int64_t number);

}  // namespace ebbline::postgres
