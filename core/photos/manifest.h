#pragma once
/// \file
/// What opens and proves one sealed photograph: its key, its hash as a whole and chunk by chunk. It travels inside
/// the journal, sealed end to end; the ciphertext travels apart, and nobody on that way can open it or change it
/// unseen. Layout to the byte: docs/formats/photos.md.

#include "core/bytes/bytes.h"
#include "core/result/result.h"

#include <cstdint>
#include <vector>

namespace ebbline::photos {

using PhotoId = bytes::Id<struct PhotoTag>;

/// How the face is turned to the camera. Left and right are the patient's own. Stored and sent: never renumber.
enum class Pose : std::uint8_t { front = 1, leftOblique = 2, rightOblique = 3 };

inline constexpr std::size_t chunkPlaintext = 64 * 1024;  ///< bytes in each chunk but the last
inline constexpr std::size_t mostChunks = 72;             ///< the largest photograph after padding; our own choice
/// Bytes of the largest chunk: the first one, with the stream's header in front.
inline constexpr std::size_t largestChunk = 24 + chunkPlaintext + 17;

/// How a ciphertext of so many bytes is cut.
class Shape {
public:
    /// \returns Reason::outOfRange for a size that no sealed photograph has.
    static Result<Shape> of(std::uint64_t ciphertextSize);

    std::uint32_t chunks() const { return m_chunks; }
    std::size_t chunkSize(std::uint32_t number) const;  ///< bytes. \pre number < chunks()
    std::size_t plaintextSize() const;                  ///< bytes, with the padding

private:
    Shape(std::uint64_t size, std::uint32_t chunks) : m_size(size), m_chunks(chunks) {}
    std::uint64_t m_size;
    std::uint32_t m_chunks;
};

struct Manifest {
    PhotoId photo;
    bytes::Array<32> key{};
    std::uint32_t size = 0;                     ///< bytes of the whole ciphertext
    bytes::Array<32> hash{};                    ///< BLAKE2b-256 of it
    std::vector<bytes::Array<16>> chunkHashes;  ///< BLAKE2b-128 of each chunk

    bool operator==(const Manifest&) const = default;
};

/// \returns Reason::malformed for a null name, Reason::outOfRange for a size or a number of chunks that do not fit.
Done check(const Manifest& manifest);

bytes::Bytes encode(const Manifest& manifest);
/// \returns as check(), Reason::malformed for any other bytes, Reason::unsupported for a newer version.
Result<Manifest> decodeManifest(bytes::View input);

}  // namespace ebbline::photos
