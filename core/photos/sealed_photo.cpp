#include "core/photos/sealed_photo.h"

#include "core/bytes/reader.h"
#include "core/crypto/stream.h"
#include "core/photos/jpeg_scan.h"

namespace ebbline::photos {

namespace {

/// Of every chunk: it belongs to this photograph and to nothing else of ours.
bytes::Bytes associatedWith(const PhotoId& photo)
{
    return bytes::Writer().raw(bytes::viewOf("EB-PHOTO-v1")).raw(photo.view()).bytes();
}

}  // namespace

Result<SealedPhoto> seal(bytes::View jpeg)
{
    if (const auto facts = scanJpeg(jpeg); !facts)
        return fail(facts.error());
    SealedPhoto sealed;
    sealed.manifest.photo = PhotoId{crypto::randomArray<16>()};
    const crypto::Secret key = crypto::Secret::random();
    std::ranges::copy(key.view(), sealed.manifest.key.begin());
    bytes::Bytes plaintext = crypto::pad(jpeg, crypto::padmeSize(jpeg.size() + 1));
    const bytes::Bytes associated = associatedWith(sealed.manifest.photo);
    crypto::StreamSealer stream(key);
    crypto::Hash256 whole;
    for (std::size_t from = 0; from < plaintext.size(); from += chunkPlaintext) {
        const std::size_t length = std::min(chunkPlaintext, plaintext.size() - from);
        const bool last = from + length == plaintext.size();
        bytes::Bytes chunk;
        if (from == 0)
            chunk.assign(stream.header().begin(), stream.header().end());
        const bytes::Bytes piece = stream.add(bytes::View(plaintext).subspan(from, length), associated, last);
        chunk.insert(chunk.end(), piece.begin(), piece.end());
        whole.add(chunk);
        sealed.manifest.size += static_cast<std::uint32_t>(chunk.size());
        sealed.manifest.chunkHashes.push_back(crypto::hash128(chunk));
        sealed.chunks.push_back(std::move(chunk));
    }
    crypto::wipe(plaintext);
    sealed.manifest.hash = whole.take();
    return sealed;
}

Done checkChunk(const Manifest& manifest, std::uint32_t number, bytes::View chunk)
{
    if (number >= manifest.chunkHashes.size())
        return fail(Reason::outOfRange, "photo: it has no such chunk");
    if (crypto::hash128(chunk) != manifest.chunkHashes[number])
        return fail(Reason::forged, "photo: a chunk is not the one that was sealed");
    return {};
}

Result<bytes::Bytes> open(const Manifest& manifest, const std::vector<bytes::Bytes>& chunks)
{
    const auto shape = Shape::of(manifest.size);
    if (!shape)
        return fail(shape.error());
    if (chunks.size() != shape->chunks() || manifest.chunkHashes.size() != chunks.size())
        return fail(Reason::notEnough, "photo: chunks are missing");
    crypto::Hash256 whole;
    for (std::uint32_t number = 0; number < chunks.size(); ++number) {
        if (chunks[number].size() != shape->chunkSize(number))
            return fail(Reason::forged, "photo: a chunk has another length");
        if (const Done same = checkChunk(manifest, number, chunks[number]); !same)
            return fail(same.error());
        whole.add(chunks[number]);
    }
    if (whole.take() != manifest.hash)
        return fail(Reason::forged, "photo: as a whole it is not what was sealed");

    crypto::StreamHeader header{};
    std::copy_n(chunks.front().begin(), header.size(), header.begin());
    crypto::StreamOpener stream(crypto::Secret::from(manifest.key), header);
    const bytes::Bytes associated = associatedWith(manifest.photo);
    bytes::Bytes plaintext;
    plaintext.reserve(shape->plaintextSize());
    for (std::size_t number = 0; number < chunks.size(); ++number) {
        const auto piece = stream.take(bytes::View(chunks[number]).subspan(number == 0 ? header.size() : 0), associated);
        if (!piece)
            return fail(piece.error());
        if (piece->last != (number + 1 == chunks.size()))
            return fail(Reason::forged, "photo: it was cut off or added to");
        plaintext.insert(plaintext.end(), piece->plaintext.begin(), piece->plaintext.end());
    }
    auto jpeg = crypto::unpad(plaintext);
    if (!jpeg)
        return fail(jpeg.error());
    if (crypto::padmeSize(jpeg->size() + 1) != plaintext.size())
        return fail(Reason::malformed, "photo: padded to another size than ours");
    if (const auto facts = scanJpeg(*jpeg); !facts)
        return fail(facts.error());
    return jpeg;
}

}  // namespace ebbline::photos
