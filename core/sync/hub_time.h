#pragma once
/// \file
/// How far this device's clock is from its hub's. Every answer of a hub says its time; it signs requests and is shown to
/// the person, and decides nothing else: no stamp is changed, no entry is judged by it (docs/decisions/0009-clock-rule.md).
/// A hub can say a wrong time, and then a right clock is called wrong.

#include "core/vault/vault.h"

namespace ebbline::sync {

/// From here on it is worth saying. Source: our own choice; a person's watch and a phone differ by less.
inline constexpr std::chrono::minutes clockDiffers{10};

/// More than this is not told apart: a hub may say any time, and a page counts the minutes in a number that has an end. Source: our own choice.
inline constexpr std::chrono::minutes mostClockAhead = std::chrono::days(10 * 365);

/// A hub's time as it says it, seconds since 1970; empty for what no hub can mean.
std::optional<std::chrono::seconds> hubTimeIn(std::string_view said);

/// What a run found: how far this clock is ahead of the hub's, negative if behind, at most mostClockAhead either
/// way. Written only where it changes what is shown.
/// \returns Reason::storageFailed.
Done noteClockAhead(vault::Vault& vault, std::chrono::seconds ahead);

/// How far this clock is ahead of the hub's, negative if behind, as the last run found; empty within clockDiffers, or
/// while no hub has answered.
std::optional<std::chrono::minutes> clockAhead(const vault::Vault& vault);

}  // namespace ebbline::sync
