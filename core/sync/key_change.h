#pragma once
/// \file
/// When keys that others seal to are replaced and destroyed, so that whoever takes a device's keys cannot read what a hub
/// kept from long before. The times are those of docs/formats/statements.md; why: docs/decisions/0024.

#include "core/vault/vault.h"

namespace ebbline::sync {

/// A clinic's epoch and a phone's box key are followed by the next one after so long.
inline constexpr std::chrono::hours keyIsInForce{30 * 24};
/// An owner's desk that is not the first of the roster leaves it to the first one for so long.
inline constexpr std::chrono::hours otherOwnerWaits{15 * 24};
/// A key that was followed is destroyed after so long: 90 days that an envelope may wait at a hub, and 30 more.
inline constexpr std::chrono::hours oldKeyIsKept{120 * 24};
/// A clinic's is destroyed after so long already, if every phone in use has sealed to a later one since: an acknowledged
/// envelope stays at a hub for seven days.
inline constexpr std::chrono::hours passedKeyIsKept{7 * 24};
/// Who heard nothing new for so long pulls before it seals: there may be a newer key.
inline constexpr std::chrono::hours hearFirstAfter{5 * 24};
/// The other end is asked again to seal anew after so long.
inline constexpr std::chrono::hours askAgainAfter{24};

/// Under this name an owner's desk keeps the secret of the epoch that comes next: a backup then opens what patients seal
/// until the one after.
inline constexpr std::string_view preparedKeyName = "key-next";

/// Whether the newest key was in force for keyIsInForce and `longer`. A clock that was set back counts as over: a key too many
/// harms nobody. \returns Reason::storageFailed.
Result<bool> isKeyDue(vault::Vault& vault, std::chrono::hours longer = std::chrono::hours{0});

/// Destroys the keys whose time is over. A clock that runs behind keeps them longer, none is destroyed for it.
Done destroyOldKeys(vault::Vault& vault);

}  // namespace ebbline::sync
