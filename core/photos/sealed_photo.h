#pragma once
/// \file
/// Seals a photograph once, into chunks that are kept, sent and resumed one by one, and opens it again.
///
/// libsodium's secretstream under a random key of its own, 64 KiB of plaintext a chunk, the size padded (Padmé) so
/// that it says little about the picture. The chunks are to be kept: sealing again would make other bytes.

#include "core/photos/manifest.h"

namespace ebbline::photos {

struct SealedPhoto {
    Manifest manifest;
    std::vector<bytes::Bytes> chunks;
};

/// Under a fresh name and a fresh key. \returns as scanJpeg(): only what the reader will take is sealed.
Result<SealedPhoto> seal(bytes::View jpeg);

/// Whether a chunk is the one that the manifest names. \returns Reason::outOfRange for a number beyond the last,
/// Reason::forged for other bytes.
Done checkChunk(const Manifest& manifest, std::uint32_t number, bytes::View chunk);

/// The picture as JPEG bytes that scanJpeg() takes.
/// \pre check(manifest) holds
/// \returns Reason::notEnough if chunks are missing, Reason::forged if any is not the one that was sealed, cut off,
///          swapped or added to, Reason::malformed for a wrong padding, and as scanJpeg().
Result<bytes::Bytes> open(const Manifest& manifest, const std::vector<bytes::Bytes>& chunks);

}  // namespace ebbline::photos
