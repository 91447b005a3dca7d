#pragma once
/// \file
/// A small file that is either the old one or the new one, whatever happens while it is written.

#include "core/bytes/bytes.h"
#include "core/result/result.h"

#include <filesystem>

namespace ebbline::store {

/// Writes to a temporary file beside it, syncs, renames, syncs the folder.
/// \returns Reason::storageFull, Reason::storageFailed.
Done writeDurably(const std::filesystem::path& file, bytes::View contents);

/// Overwrites the bytes of a file with zeros where they are, and syncs them: of a key that is to go. Whether a disk puts
/// them where the old ones were is out of reach. \returns Reason::notFound, Reason::storageFailed.
Done overwrite(const std::filesystem::path& file);

/// Makes what was made, renamed or removed in a folder durable. \returns Reason::storageFailed.
Done syncFolder(const std::filesystem::path& path);

/// At most `limit` bytes. \returns Reason::notFound, Reason::tooLarge, Reason::storageFailed.
Result<bytes::Bytes> readWhole(const std::filesystem::path& file, std::size_t limit);

/// Gives a synced file its final name, durably, never over another one.
/// \returns Reason::alreadyExists, Reason::storageFailed.
Done renameToNew(const std::filesystem::path& from, const std::filesystem::path& to);

/// Moves a folder, with everything in it synced, over nothing or over an empty folder, durably.
/// \returns Reason::alreadyExists, Reason::storageFailed.
Done renameFolder(const std::filesystem::path& from, const std::filesystem::path& to);

}  // namespace ebbline::store
