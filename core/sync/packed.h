#pragma once
/// \file
/// What stands compressed within bytes, for whoever searches what was carried or kept: a batch of operations is
/// packed before it is sealed (packOperations), and packed words are found by no search for the words.

#include "core/bytes/bytes.h"

#include <vector>

namespace ebbline::sync {

/// Every zstd frame (RFC 8878) that begins anywhere within `bytes`, unpacked as far as it goes: one that is cut short or
/// damaged gives what stands before that. At most maximumUnpacked of each. Frames within frames are not looked for.
std::vector<bytes::Bytes> unpackedWithin(bytes::View bytes);

}  // namespace ebbline::sync
