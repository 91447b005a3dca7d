#pragma once
/// \file
/// The file `vault.keys`: the vault's random data key, wrapped once per way to unlock it.
/// Layout to the byte: docs/formats/vault.md. A commitment tag in each slot tells a wrong
/// passphrase (Reason::wrongKey) from a damaged file (Reason::damaged).

#include "core/crypto/crypto.h"

#include <filesystem>
#include <optional>
#include <vector>

namespace ebbline::vault {

/// Stored: never renumber.
enum class SlotKind : std::uint8_t { passphraseAndKeystore = 1, passphrase = 2, recoveryCode = 3, desk = 4 };

class KeySlots {
public:
    static constexpr std::size_t slotSize = 120;
    static constexpr std::size_t slotCount = 4;
    static constexpr std::size_t fileSize = slotSize * slotCount + 16;

    /// A fresh data key with one slot. `keystoreSecret`: 32 bytes or empty.
    static Result<std::pair<KeySlots, crypto::Secret>> create(SlotKind kind, bytes::View secret,
                                                              const crypto::StretchCost& cost,
                                                              bytes::View keystoreSecret = {});

    /// What can be read of both generations, newest first; one of them if they are the same.
    /// \returns Reason::notFound if there is no key file, Reason::damaged if no slot of either can be
    ///          read, Reason::storageFailed.
    static Result<std::vector<KeySlots>> generations(const std::filesystem::path& folder);

    /// True if both generations are there and undamaged; or one of them.
    static bool isWhole(const std::filesystem::path& folder);
    static bool isFileSound(const std::filesystem::path& folder, bool newest);

    /// True if the file's checksum holds. Of a damaged file the slots that can be read still work.
    bool isSound() const { return m_sound; }

    /// Written to a temporary file, synced, renamed, folder synced; the previous generation is kept.
    Done save(const std::filesystem::path& folder) const;

    /// As save(); once the new generation has been read back, it replaces the previous one too, so
    /// that a way in that was given up opens neither. A crash on the way leaves the old or the new.
    Done saveAndForget(const std::filesystem::path& folder) const;

    /// \returns the data key; Reason::wrongKey only if the file is undamaged, else Reason::damaged;
    ///          Reason::notFound if there is no slot of the kind.
    Result<crypto::Secret> unlock(SlotKind kind, bytes::View secret, bytes::View keystoreSecret = {}) const;

    /// Wraps the same data key for another way in, replacing a slot of that kind.
    /// \returns Reason::storageFull if all slots are taken.
    Done put(const crypto::Secret& dataKey, SlotKind kind, bytes::View secret,
             const crypto::StretchCost& cost, bytes::View keystoreSecret = {});

    /// Gives a way in up.
    void drop(SlotKind kind);

    bool has(SlotKind kind) const;

    /// Tells one slot of a kind from every other that was ever put there, and nothing of its secret: of the bytes as they are stored,
    /// with their random salt. Empty: there is none.
    std::optional<bytes::Array<16>> nameOf(SlotKind kind) const;

    /// The dearest stretching among the ways in, each of its two figures for itself; empty of a damaged file, which
    /// may say anything.
    std::optional<crypto::StretchCost> dearest() const;

    bytes::Bytes encode() const;
    static Result<KeySlots> decode(bytes::View input);

private:
    KeySlots() = default;
    std::array<std::optional<bytes::Array<slotSize>>, slotCount> m_slots{};
    bool m_sound = true;
};

}  // namespace ebbline::vault
