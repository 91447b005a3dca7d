#pragma once
/// \file
/// A mailbox as sync sees it, whether a phone's or between two desks; inside of core/sync only.

#include "core/vault/vault.h"

#include <set>

namespace ebbline::sync {

struct Post {
    envelope::MailboxId mailbox;
    recovery::CourseId course;
    crypto::SigningPublicKey root;       ///< whose statements count here
    crypto::BoxPublicKey sealTo;
    std::uint32_t epoch = 1;
    std::vector<crypto::SigningPublicKey> peers;  ///< who may write to us here
    std::set<envelope::DeviceId> colleagues;      ///< other desks: what they write here is for the phone
    std::vector<envelope::DeviceId> revoked;      ///< desks that were shut out, the last one first: nothing of them is wanted
    std::uint64_t rosterSent = 0;
    std::string hub;
    bool channel = false;                ///< between desks
    bool tooOld = false;                 ///< the clinic asks for a newer program: nothing of ours is sent
    bool ended = false;                  ///< a phone that was replaced: its entries count no more

    const crypto::SigningPublicKey* peer(const envelope::DeviceId& device) const;
};

/// Every mailbox of the vault that is still in use, phones before desks. \returns Reason::storageFailed.
Result<std::vector<Post>> postsOf(const vault::Vault& vault);

/// Whether somebody shut this desk out, or ended this phone, since the post was made.
Result<bool> hasEnded(const vault::Vault& vault, const Post& post);

/// Whether a sign of life is due. The phone gives one whenever it is used; a clinic answers a phone that was heard since.
bool heartbeatIsDue(const vault::Vault& vault, const Post& post);

/// "/v1/m/…"
std::string mailboxPath(const envelope::MailboxId& mailbox);

/// What is asked of a mailbox: everything past what this vault holds, and nothing of those who are left out.
/// \returns Reason::storageFailed.
Result<std::string> questionFor(const vault::Vault& vault, const Post& post, const std::set<envelope::DeviceId>& leftOut = {});

}  // namespace ebbline::sync
