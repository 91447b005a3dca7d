#pragma once
/// \file
/// What a clinic asks of every program at least, under its root's signature. A program that speaks less sends nothing until it
/// is updated: it keeps what is written, warns and shows as before, still takes what comes, and says what to do.

#include "core/pairing/statement.h"
#include "core/vault/vault.h"

namespace ebbline::sync {

/// The newest statement that a vault knows of a clinic. Empty: the clinic asks for nothing. What does not hold any more counts as none.
std::optional<pairing::LeastVersion> leastVersion(const vault::Vault& vault, const crypto::SigningPublicKey& root);
/// The same as it was signed.
Result<std::optional<bytes::Bytes>> signedLeastVersion(const vault::Vault& vault, const crypto::SigningPublicKey& root);
/// Keeps it if it is newer. \returns Reason::outOfOrder if another one has the same number.
Done keepLeastVersion(vault::Vault& vault, const crypto::SigningPublicKey& root, const pairing::LeastVersion& least, bytes::View signedBytes);

/// Whether a clinic asks for more than this program speaks.
bool isTooOld(const vault::Vault& vault, const crypto::SigningPublicKey& root);

/// Under this name a desk keeps which one a mailbox was told, as its hash.
std::string toldLeastName(const envelope::MailboxId& mailbox);
/// Under this name a vault keeps a signed statement of a kind that a newer program knows: it was passed over, not understood.
std::string newerStatementName(const envelope::MailboxId& mailbox);

}  // namespace ebbline::sync
