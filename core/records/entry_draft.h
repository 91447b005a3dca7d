#pragma once
/// \file
/// An entry that is still being written.

#include "core/bytes/bytes.h"
#include "core/recovery/entry.h"

namespace ebbline::records {

/// Reads the bytes of an EntryRecorded without asking whether the entry is complete.
/// \returns Reason::malformed, Reason::unsupported.
Result<recovery::Entry> decodeEntryDraft(bytes::View input);

}  // namespace ebbline::records
