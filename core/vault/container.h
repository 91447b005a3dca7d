#pragma once
/// \file
/// The bytes of a backup file; inside of core/vault only. Layout: docs/formats/backup.md.

#include "core/clock/instant.h"
#include "core/crypto/crypto.h"

#include <filesystem>

namespace ebbline::vault {

struct Container {
    std::uint64_t size = 0;
    bytes::Array<32> hash{};
    clock::Instant made{};
};

/// Packs a vault's folder (key file, open.info if there is one, database) into a new file, and syncs it.
/// \pre nobody writes to the folder
Result<Container> pack(const std::filesystem::path& folder, clock::Instant made, const std::filesystem::path& file);

/// Checks the whole file, then unpacks it into an existing, empty folder, and syncs what it wrote.
/// \returns Reason::notFound, Reason::malformed, Reason::unsupported, Reason::damaged; nothing is written then.
Result<Container> unpack(const std::filesystem::path& file, const std::filesystem::path& folder);

}  // namespace ebbline::vault
