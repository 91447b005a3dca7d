#pragma once
/// \file
/// The tables of the embedded store and the key of its file; inside of core/mailbox only. A released
/// migration is never changed: what is new goes into the next one.

#include "core/store/database.h"

#include <array>

namespace ebbline::mailbox {

extern const std::array<store::Migration, 3> hubMigrations;

/// The key in a file, 32 bytes; a fresh one is written if the file is not there.
/// \returns Reason::malformed for another length, Reason::storageFailed.
Result<crypto::Secret> keyFrom(const std::filesystem::path& file);

}  // namespace ebbline::mailbox
