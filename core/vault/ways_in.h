#pragma once
/// \file
/// The ways into a vault and how they change: passphrase and printed recovery code. Every change asks
/// for one of them again, so that a vault left open does not give itself away; every attempt counts
/// with the AttemptGuard. A way that was replaced opens nothing afterwards, in either generation of
/// the key file.
///
/// A passphrase may be bound to its device: a secret of the device's key store is mixed in, and the files
/// alone can not be searched elsewhere. Key stores lose keys, so that needs a recovery code beside it, which whoever binds
/// knows to be on paper.

#include "core/clock/instant.h"
#include "core/vault/key_slots.h"
#include "core/vault/recovery_code.h"

#include <functional>

namespace ebbline::vault {

class Vault;

/// What somebody offers to open a vault with. Holds no copy: the bytes must outlive it.
struct Offered {
    enum class Kind : std::uint8_t { passphrase, recoveryCode } kind = Kind::passphrase;
    bytes::View secret;
    bytes::View deviceSecret = {};  ///< 32 bytes of the key store; empty: not at hand

    static Offered passphrase(bytes::View words, bytes::View deviceSecret = {}) { return {Kind::passphrase, words, deviceSecret}; }
    static Offered recoveryCode(const RecoveryCode& code) { return {Kind::recoveryCode, code.view()}; }
};

/// The kind of slot that an offer is for: a desk's passphrase has a kind of its own, and so has one that is
/// bound to its device.
SlotKind kindOf(const KeySlots& slots, const Offered& offered);

/// Opens the data key of one generation. \returns as KeySlots::unlock(), and Reason::refused as openDataKey().
Result<crypto::Secret> unlockSlot(const KeySlots& slots, const Offered& offered);

/// Opens the data key. Both generations of the key file are asked; a damaged newest one is mended
/// from the one before, if that opens.
/// \returns Reason::wrongKey if an undamaged file says so, Reason::damaged, Reason::notFound if there is no
///          key file or no such way in, Reason::tooSoon; Reason::refused, which counts as no attempt, if the
///          passphrase is bound to its device and the offer lacks the device's secret.
Result<crypto::Secret> openDataKey(const std::filesystem::path& folder, const Offered& offered,
                                   const clock::Readings& now);

/// A fresh recovery code in place of the old one, stored before it is returned: show it once.
/// \param cost  at least; never below what a way into this vault costs already
/// \returns as openDataKey(), and Reason::storageFull, Reason::storageFailed, Reason::tooLarge if the memory for the
///          stretching cannot be had: the old code holds then.
Result<RecoveryCode> renewRecoveryCode(const std::filesystem::path& folder, const Offered& offered,
                                       const crypto::StretchCost& cost, const clock::Readings& now);

/// Replaces the passphrase; also the way back after the recovery code opened the vault.
/// \param cost  as for renewRecoveryCode()
/// \param deviceSecret  binds the new one to this device, 32 bytes; empty: it is not bound, whatever the old was
/// \returns as renewRecoveryCode(): the old passphrase holds then. Reason::invalidState for binding without a
///          recovery code, or at a desk.
Done changePassphrase(const std::filesystem::path& folder, const Offered& offered, bytes::View newPassphrase,
                      const crypto::StretchCost& cost, const clock::Readings& now, bytes::View deviceSecret = {});

/// True if the passphrase is bound to its device.
bool isBoundToDevice(const std::filesystem::path& folder);

/// True if a recovery code was made for this vault.
bool hasRecoveryCode(const std::filesystem::path& folder);

/// Keeps in the open vault of this folder that its recovery code was read from paper: a group of it was read back, or all of it was
/// typed. It holds for this code alone: another one begins without, and so does every code of a vault of before.
/// \returns Reason::notFound without a code, as KeySlots::generations(), and Reason::storageFull, Reason::storageFailed.
Done noteCodeOnPaper(Vault& vault, const std::filesystem::path& folder);
/// False also if it cannot be told.
bool isCodeOnPaper(const Vault& vault, const std::filesystem::path& folder);

/// The costliest stretching on this machine that stays within 700 ms, never below
/// crypto::stretchFloor, at most 256 MiB and 4 passes. Takes up to about a second and a half.
/// Source of the bounds: our own choice, argued in docs/formats/vault.md.
crypto::StretchCost calibratedCost(const clock::Clock& clock);
/// The same with a given measurement: how long one stretching takes, empty if the memory cannot be had.
crypto::StretchCost calibratedCost(
    const std::function<std::optional<std::chrono::milliseconds>(const crypto::StretchCost&)>& measure);

}  // namespace ebbline::vault
