#include "core/photos/manifest.h"

#include "core/bytes/reader.h"
#include "core/crypto/stream.h"

namespace ebbline::photos {

namespace {

constexpr std::uint8_t version = 1;

static_assert(largestChunk == crypto::streamHeaderSize + chunkPlaintext + crypto::streamOverhead);

}  // namespace

Result<Shape> Shape::of(std::uint64_t ciphertextSize)
{
    constexpr std::size_t whole = chunkPlaintext + crypto::streamOverhead;
    constexpr std::size_t smallest = crypto::streamHeaderSize + crypto::streamOverhead + 1;
    if (ciphertextSize < smallest || ciphertextSize > crypto::streamHeaderSize + mostChunks * whole)
        return fail(Reason::outOfRange, "photo: no sealed one has this size");
    const std::uint64_t pieces = ciphertextSize - crypto::streamHeaderSize;
    const auto chunks = static_cast<std::uint32_t>((pieces + whole - 1) / whole);
    // Of the last chunk at least one byte must be left beside the tag.
    if (pieces - (chunks - 1) * whole <= crypto::streamOverhead)
        return fail(Reason::outOfRange, "photo: no sealed one has this size");
    return Shape(ciphertextSize, chunks);
}

std::size_t Shape::chunkSize(std::uint32_t number) const
{
    constexpr std::size_t whole = chunkPlaintext + crypto::streamOverhead;
    const std::size_t header = number == 0 ? crypto::streamHeaderSize : 0;
    if (number + 1 < m_chunks)
        return header + whole;
    return header + (m_size - crypto::streamHeaderSize - (m_chunks - 1) * whole);
}

std::size_t Shape::plaintextSize() const
{
    return m_size - crypto::streamHeaderSize - m_chunks * crypto::streamOverhead;
}

Done check(const Manifest& manifest)
{
    if (manifest.photo.isNull())
        return fail(Reason::malformed, "photo: its name is missing");
    const auto shape = Shape::of(manifest.size);
    if (!shape)
        return fail(shape.error());
    if (manifest.chunkHashes.size() != shape->chunks())
        return fail(Reason::outOfRange, "photo: the number of chunks does not fit its size");
    return {};
}

bytes::Bytes encode(const Manifest& manifest)
{
    bytes::Writer out;
    out.u8(version).raw(manifest.photo.view()).raw(manifest.key).u32(manifest.size).raw(manifest.hash);
    out.u16(static_cast<std::uint16_t>(manifest.chunkHashes.size()));
    for (const bytes::Array<16>& hash : manifest.chunkHashes)
        out.raw(hash);
    return std::move(out).bytes();
}

Result<Manifest> decodeManifest(bytes::View input)
{
    bytes::Reader reader(input);
    const std::uint8_t used = reader.u8();
    if (!reader.ok())
        return fail(Reason::malformed, "photo: the manifest is empty");
    if (used != version)
        return fail(Reason::unsupported, "photo: a manifest of a newer program");
    Manifest manifest;
    manifest.photo = reader.id<PhotoTag>();
    manifest.key = reader.array<32>();
    manifest.size = reader.u32();
    manifest.hash = reader.array<32>();
    const std::size_t count = reader.u16();
    if (!reader.ok() || count > mostChunks || reader.left() != count * 16)
        return fail(Reason::malformed, "photo: the manifest's lengths do not add up");
    for (std::size_t i = 0; i < count; ++i)
        manifest.chunkHashes.push_back(reader.array<16>());
    if (const Done checked = check(manifest); !checked)
        return fail(checked.error());
    return manifest;
}

}  // namespace ebbline::photos
