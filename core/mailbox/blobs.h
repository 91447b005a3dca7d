#pragma once
/// \file
/// Large ciphertexts that lie in a mailbox beside its envelopes, in chunks that are put and fetched one by one, so
/// that a transfer goes on where it was cut. A hub knows sizes and numbers of chunks; it cannot tell what they hold.

#include "core/bytes/bytes.h"

#include <cstdint>
#include <vector>

namespace ebbline::mailbox {

using BlobId = bytes::Id<struct BlobTag>;

inline constexpr std::uint32_t mostBlobChunks = 128;         ///< our own choice
inline constexpr std::size_t largestBlobChunk = 66 * 1024;   ///< bytes; 64 KiB and what sealing adds
inline constexpr std::size_t smallestBlobChunk = 64 * 1024;  ///< bytes of all but the last, so that rows stay few

struct BlobShape {
    std::uint32_t chunks = 0;  ///< 1..mostBlobChunks
    std::uint64_t size = 0;    ///< bytes of all chunks together
    bool operator==(const BlobShape&) const = default;

    /// Whether so many chunks can hold so many bytes, within the bounds above.
    bool fits() const
    {
        return chunks >= 1 && chunks <= mostBlobChunks && size > std::uint64_t{chunks - 1} * smallestBlobChunk
               && size <= std::uint64_t{chunks} * largestBlobChunk;
    }
};

struct BlobStanding {
    BlobShape shape;
    bool complete = false;               ///< finished: readers see it
    std::vector<std::uint32_t> missing;  ///< numbers of chunks from 0, ascending
};

}  // namespace ebbline::mailbox
