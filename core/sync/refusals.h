#pragma once
/// \file
/// What a hub refuses to take of this device, kept until it takes it. An envelope that is refused is never passed over:
/// those behind it follow in its chain, and wait with it (docs/decisions/0030-nothing-is-skipped.md). It is tried
/// again ever more rarely; other mailboxes, and what comes in the same one, go on.

#include "core/vault/vault.h"

namespace ebbline::sync {

struct Post;

struct Refusal {
    /// Kept by number: never renumber.
    enum class Why : std::uint8_t {
        unknownThere = 1,  ///< it does not know the device or the mailbox, or does not believe the signature
        taken = 2,         ///< it holds another envelope under this number
        full = 3,          ///< it has no room left for this mailbox
        unreadable = 4,    ///< it finds it too large, or cannot read it
    };
    Why why = Why::unreadable;
    std::uint64_t sequence = 0;  ///< of the envelope, in its mailbox
    std::uint32_t times = 0;     ///< in a row
    clock::Instant since{};      ///< the first of them
    clock::Instant triedAt{};    ///< the last of them
};

/// So many refusals in a row are followed by the next run; then by a pause that begins with a minute, doubles, and ends at
/// longestRest. Our own choice: what passes by itself is over at once, and what does not costs a hub little.
inline constexpr std::uint32_t refusalsBeforeRest = 3;
inline constexpr std::chrono::minutes longestRest{60};

/// Why the hub does not take an envelope; empty if the error is none of its refusals (no network, a limit of its own).
std::optional<Refusal::Why> refusedBecause(const Error& error);

/// Of one mailbox; empty if nothing is refused, or the other end acknowledged it meanwhile. \returns Reason::storageFailed.
Result<std::optional<Refusal>> refusalOf(const vault::Vault& vault, const envelope::MailboxId& mailbox);

/// Of all mailboxes in use, those between desks among them. \returns Reason::storageFailed.
Result<std::vector<Refusal>> refusals(const vault::Vault& vault);

/// Whether the envelope is to be left alone for now. A time ahead of us means that somebody set the clock: it is tried.
bool rests(const Refusal& refusal, clock::Instant now);

/// Counts one more, or begins with another envelope. \returns Reason::storageFailed.
Done noteRefused(vault::Vault& vault, const envelope::MailboxId& mailbox, std::uint64_t sequence, Refusal::Why why);
/// A hub that does not know this desk takes nothing of it: that is kept of every mailbox where something waits. For core/sync.
Done noteUnknownThere(vault::Vault& vault, const std::vector<Post>& posts);
Done forgetRefusal(vault::Vault& vault, const envelope::MailboxId& mailbox);

}  // namespace ebbline::sync
