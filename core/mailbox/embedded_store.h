#pragma once
/// \file
/// The hub's store in one encrypted file of its own machine.

#include "core/mailbox/mail_store.h"

#include <filesystem>
#include <memory>

namespace ebbline::mailbox {

/// Whether a store lies in the folder. \returns Reason::storageFailed if the folder does not let itself be looked into.
Result<bool> holdsEmbeddedStore(const std::filesystem::path& folder);

/// Opens or creates `hub.db` in the folder; its key lies beside it in `hub.key` (32 bytes,
/// readable by the owner only) unless `keyFile` names another place. The contents are ciphertext
/// already; this layer protects identifiers and times on a lost disk.
/// \returns as store::Database::open; Reason::malformed for a key file of another length; Reason::notFound, with nothing
/// made, where no store is and none shall be.
Result<std::unique_ptr<MailStore>> openEmbeddedStore(const std::filesystem::path& folder,
                                                     const std::filesystem::path& keyFile = {},
                                                     IfMissing ifMissing = IfMissing::make);

}  // namespace ebbline::mailbox
