#pragma once
/// \file
/// Seals any plaintext as one chunk, with a manifest that fits: what somebody can do who holds the key and does not
/// run our program.

#include "core/bytes/reader.h"
#include "core/crypto/stream.h"
#include "core/photos/sealed_photo.h"

namespace ebbline::test {

/// The manifest with sizes and hashes of these chunks.
inline photos::Manifest refitted(photos::Manifest manifest, const std::vector<bytes::Bytes>& chunks)
{
    manifest.chunkHashes.clear();
    manifest.size = 0;
    crypto::Hash256 whole;
    for (const bytes::Bytes& chunk : chunks) {
        manifest.chunkHashes.push_back(crypto::hash128(chunk));
        manifest.size += static_cast<std::uint32_t>(chunk.size());
        whole.add(chunk);
    }
    manifest.hash = whole.take();
    return manifest;
}

inline photos::SealedPhoto sealedAs(const bytes::Bytes& plaintext)
{
    photos::SealedPhoto made;
    made.manifest.photo = photos::PhotoId{crypto::randomArray<16>()};
    const crypto::Secret key = crypto::Secret::random();
    std::ranges::copy(key.view(), made.manifest.key.begin());
    const bytes::Bytes associated = bytes::Writer().raw(bytes::viewOf("EB-PHOTO-v1")).raw(made.manifest.photo.view()).bytes();
    crypto::StreamSealer stream(key);
    bytes::Bytes chunk(stream.header().begin(), stream.header().end());
    const bytes::Bytes piece = stream.add(plaintext, associated, true);
    chunk.insert(chunk.end(), piece.begin(), piece.end());
    made.chunks = {chunk};
    made.manifest = refitted(made.manifest, made.chunks);
    return made;
}

}  // namespace ebbline::test
