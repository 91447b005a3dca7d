#pragma once
/// \file
/// A desk that was put back to an older copy says so to its colleagues; inside of core/sync only. Its own chain is taken by what
/// it sealed before, so the word stands outside of it, under a number that no chain reaches (docs/formats/statements.md, form 7).

#include "core/sync/courier.h"
#include "core/sync/post.h"

namespace ebbline::sync {

/// Always the same: a hub keeps one such word of a desk, and takes no other.
inline constexpr std::uint64_t olderCopyNumber = vault::Vault::besideEveryChain;

/// The request that says it in a channel; empty where there is nothing to say, or it was said within the last day.
/// \returns Reason::storageFailed.
Result<std::optional<mailbox::Request>> olderCopyWord(const vault::Vault& vault, const Post& post);

/// The hub holds it. It is said again after a day: a hub may lose what it took.
Done noteOlderCopyTold(vault::Vault& vault, const envelope::MailboxId& mailbox);

}  // namespace ebbline::sync
