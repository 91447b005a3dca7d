#pragma once
/// \file
/// What a Vault holds while it is open; inside of core/vault only.

#include "core/vault/tails.h"
#include "core/vault/vault.h"

namespace ebbline::vault {

struct Vault::Inside {
    Inside(store::Database opened, const clock::Clock& source) : database(std::move(opened)), clock(source) {}

    store::Database database;
    const clock::Clock& clock;
    Owner owner = Owner::patient;
    envelope::DeviceId device;
    std::optional<crypto::SigningKey> signing;
    std::optional<crypto::BoxKey> box;  ///< a desk's own
    std::optional<crypto::SigningKey> root;
    std::optional<crypto::SigningPublicKey> rootKey;
    std::map<std::uint32_t, crypto::BoxKey> epochs;  ///< of the clinic; at a patient's, this device's own box keys by number
    clock::HybridClock hybrid;
    std::uint64_t lastNumber = 0;
    bytes::Array<32> lastChain{};
    journal::Journal journal;
    bytes::SharedTails tails;  ///< those of the table; whatever is used is written with it

    /// Everything above from the database.
    Done load();
    Done loadKeys();
    Done loadClinicKeys();
    /// The first one, which stands among the facts, and those that followed it.
    Done loadNumberedKeys(std::string_view firstName);
    Done storeEpoch(std::uint32_t number, const crypto::BoxKey& key);
    Done loadJournal();
    Done beginNumbers();

    Done putFact(std::string_view name, bytes::View value);
    Done putKept(std::string_view name, bytes::View value);
    Result<std::optional<bytes::Bytes>> keptOf(std::string_view name);
    Result<bytes::Bytes> fact(std::string_view name);

    Done insertOwn(const journal::Operation& operation, const bytes::Array<32>& chain,
                   const std::optional<envelope::MailboxId>& mailbox);
    /// Keeps what the bytes of an operation share with others. Empty: they stay whole.
    Result<std::optional<Cut>> putTail(bytes::View operation);
    Result<Tails> loadTails();
    /// \returns whether the operation is new here; Reason::alreadyExists if another one has its name.
    Result<bool> insertForeign(const journal::Operation& operation);
    /// Keeps when an operation came that bears a time clearly later.
    Done noteEarly(const journal::Operation& operation);
    /// What is held under a name; empty if nothing is.
    Result<std::optional<bytes::Bytes>> bytesOf(const journal::OperationId& id);
    /// If the operation takes a photograph of its course back: lets its chunks go.
    Done dropRemoved(const journal::Operation& operation);
    Done insertPhotoChunk(const photos::PhotoId& photo, std::uint32_t number, bytes::View chunk);
    Done noteTold(const envelope::MailboxId& channel, const journal::OperationId& id);
    Done putEnvelope(const envelope::MailboxId& mailbox, std::uint64_t sequence, bytes::View envelope);
    /// Remembers an envelope that was sealed here or accepted, and that we spoke or heard; it waits in
    /// quarantine no longer.
    Done notePassed(const envelope::MailboxId& mailbox, const envelope::DeviceId& device, const Cursor& head);
    /// Sets one column of a device's standing in a mailbox.
    Done noteStanding(const envelope::MailboxId& mailbox, const envelope::DeviceId& device, std::string_view column,
                      std::int64_t value);
};

inline constexpr const char* databaseFile = "vault.db";

/// Under these names a vault keeps when a numbered key was begun, and that one was destroyed.
std::string begunName(std::uint32_t number);
std::string goneName(std::uint32_t number);

/// The first number of each run of a device's own operations after the first run, which begins with 1. A vault that
/// was restored goes on in a new one.
Result<std::set<std::uint64_t>> runsOf(store::Database& database);
Done beginRun(const std::filesystem::path& file, const crypto::Secret& dataKey, clock::Instant now);

/// The raw key of the database, from the vault's data key.
crypto::Secret databaseKey(const crypto::Secret& dataKey);

/// The next link of the chain over this device's operations.
bytes::Array<32> chained(const bytes::Array<32>& before, bytes::View operation);

}  // namespace ebbline::vault
