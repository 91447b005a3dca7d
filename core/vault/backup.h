#pragma once
/// \file
/// One file that holds a whole vault: key slots, contacts and database, still encrypted, with a hash over
/// all of it (docs/formats/backup.md). A backup is reported as made only after it was unpacked, opened
/// with what was offered, inspected, and compared row by row with the vault.

#include "core/vault/inspection.h"

namespace ebbline::vault {

struct BackupReport {
    std::uint64_t size = 0;      ///< of the backup file, bytes
    bytes::Array<32> hash{};     ///< of the backup file's contents, as its last 32 bytes say
    clock::Instant made{};       ///< by the wall clock of the machine that made it
    Inspection inspection;       ///< of what was unpacked for the test, or restored
};

/// Makes `file` from the vault in `folder`; other programs may use the vault meanwhile. Works in the
/// folder `file`.part beside it, which is gone afterwards; `file` appears whole or not at all.
/// \returns as openDataKey(); Reason::alreadyExists if there is a `file`: it is never written over;
///          Reason::damaged if the vault is not sound or the backup did not prove itself;
///          Reason::storageFull, Reason::storageFailed.
Result<BackupReport> backup(const std::filesystem::path& folder, const Offered& offered, const clock::Readings& now,
                            const std::filesystem::path& file);

/// Makes a vault in `folder`, which must not exist or be empty, from a backup. It appears whole or not at all.
/// What it appends from then on has numbers of its own (docs/decisions/0019-restored-numbers.md): the original may
/// have used those that follow. `now` is when it is restored.
/// \returns Reason::notFound, Reason::malformed if it is no backup, Reason::unsupported if it is of a newer program,
///          Reason::damaged if its hash does not hold or its vault is not sound, Reason::wrongKey,
///          Reason::alreadyExists, Reason::storageFull, Reason::storageFailed.
Result<BackupReport> restore(const std::filesystem::path& file, const Offered& offered, const clock::Readings& now,
                             const std::filesystem::path& folder);

}  // namespace ebbline::vault
