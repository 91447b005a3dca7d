#pragma once
/// \file
/// The file `vault.keys`: the vault's random data key, wrapped once per way to unlock it.
/// Layout to the byte: docs/formats/vault.md. A commitment tag in each slot tells a wrong
/// passphrase (Reason::wrongKey) from a damaged file (Reason::damaged).

#include "core/clock/instant.h"
#include "core/crypto/crypto.h"

#include <filesystem>
#include <optional>

namespace ebbline::vault {

/// Stored: never renumber.
enum class SlotKind : std::uint8_t { passphraseAndKeystore = 1, passphrase = 2, recoveryCode = 3, desk = 4 };

class KeySlots {
public:
    static constexpr std::size_t slotSize = 120;
    static constexpr std::size_t slotCount = 4;

    /// A fresh data key with one slot. `keystoreSecret`: 32 bytes or empty.
    static Result<std::pair<KeySlots, crypto::Secret>> create(SlotKind kind, bytes::View secret,
                                                              const crypto::StretchCost& cost,
                                                              bytes::View keystoreSecret = {});

    /// \returns Reason::notFound, Reason::malformed, Reason::storageFailed. A damaged newest
    ///          generation falls back to the one before.
    static Result<KeySlots> load(const std::filesystem::path& folder);

    /// Written to a temporary file, synced, renamed, folder synced; the previous generation is kept.
    Done save(const std::filesystem::path& folder) const;

    /// Tries every slot of the kind. \returns the data key; Reason::wrongKey, Reason::damaged,
    /// Reason::notFound if there is no such slot.
    Result<crypto::Secret> unlock(SlotKind kind, bytes::View secret, bytes::View keystoreSecret = {}) const;

    /// Wraps the same data key for another way in, replacing a slot of that kind.
    /// \returns Reason::storageFull if all slots are taken.
    Done put(const crypto::Secret& dataKey, SlotKind kind, bytes::View secret,
             const crypto::StretchCost& cost, bytes::View keystoreSecret = {});

    bool has(SlotKind kind) const;

    bytes::Bytes encode() const;
    static Result<KeySlots> decode(bytes::View input);

private:
    KeySlots() = default;
    std::array<std::optional<bytes::Array<slotSize>>, slotCount> m_slots{};
};

/// Waiting times after wrong attempts, kept in a file of its own so that they survive a restart;
/// turning the clock back never shortens them. Five attempts are free, then
/// 30 s, 1, 2, 5, 15 minutes, then an hour each.
class AttemptGuard {
public:
    explicit AttemptGuard(std::filesystem::path folder) : m_folder(std::move(folder)) {}
    /// Counts an attempt, durably, before it is made. \returns Reason::tooSoon with the seconds
    /// left in the detail.
    Done begin(clock::Instant now);
    /// After a success.
    Done clear();
    /// Seconds until the next attempt, 0 if free.
    std::int64_t secondsLeft(clock::Instant now) const;

private:
    std::filesystem::path m_folder;
};

}  // namespace ebbline::vault
