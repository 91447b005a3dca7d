// A sealed photograph opens as it was, or not at all. Construction: docs/formats/photos.md.

#include "core/photos/sealed_photo.h"

#include "core/photos/jpeg_scan.h"
#include "tests/core/photos/sample_jpeg.h"
#include "tests/core/photos/sealed_as.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

using namespace ebbline;
using namespace ebbline::photos;
using namespace ebbline::test;

namespace {

SealedPhoto sealedOf(std::size_t coded, unsigned seed = 1)
{
    REQUIRE(crypto::initialise());
    auto sealed = seal(sampleJpegOf(coded, seed));
    REQUIRE(sealed);
    return std::move(*sealed);
}

Reason reasonOf(const Result<bytes::Bytes>& opened)
{
    return opened ? Reason{} : opened.error().reason;
}

}  // namespace

TEST_CASE("a photograph of any length opens as it was sealed", "[photos]")
{
    REQUIRE(crypto::initialise());
    REQUIRE(rc::check("lengths", [] {
        const auto coded = *rc::gen::inRange<std::size_t>(1, 200'000);
        const bytes::Bytes jpeg = sampleJpegOf(coded);
        const auto sealed = seal(jpeg);
        RC_ASSERT(sealed.has_value());
        RC_ASSERT(check(sealed->manifest).has_value());
        const auto shape = Shape::of(sealed->manifest.size);
        RC_ASSERT(shape && sealed->chunks.size() == shape->chunks());
        for (std::uint32_t number = 0; number < shape->chunks(); ++number)
            RC_ASSERT(sealed->chunks[number].size() == shape->chunkSize(number));
        // At most 12 % more than the picture, as Padmé promises.
        RC_ASSERT(shape->plaintextSize() == crypto::padmeSize(jpeg.size() + 1));
        RC_ASSERT(shape->plaintextSize() <= (jpeg.size() + 1) * 112 / 100);
        const auto opened = open(sealed->manifest, sealed->chunks);
        RC_ASSERT(opened.has_value());
        RC_ASSERT(*opened == jpeg);
    }));
}

TEST_CASE("a picture that ends with a chunk opens, and so does the largest", "[photos]")
{
    // 2 x 64 KiB is a Padmé size: the mark of the padding fills it.
    const std::size_t around = sampleJpegOf(0).size();
    const SealedPhoto two = sealedOf(2 * chunkPlaintext - 1 - around);
    CHECK(two.chunks.size() == 2);
    CHECK(two.chunks.back().size() == chunkPlaintext + crypto::streamOverhead);
    CHECK(open(two.manifest, two.chunks));
    const SealedPhoto largest = sealedOf(maximumJpeg - around);
    CHECK(largest.chunks.size() <= mostChunks);
    CHECK(open(largest.manifest, largest.chunks)->size() == maximumJpeg);
}

TEST_CASE("two sealings of one picture share no name, no key and no chunk", "[photos]")
{
    const SealedPhoto a = sealedOf(100'000), b = sealedOf(100'000);
    CHECK(a.manifest.photo != b.manifest.photo);
    CHECK(a.manifest.key != b.manifest.key);
    CHECK(a.chunks.size() == b.chunks.size());
    CHECK(a.chunks.front() != b.chunks.front());
}

TEST_CASE("what is no plain picture is not sealed", "[photos][errors]")
{
    REQUIRE(crypto::initialise());
    CHECK(seal(bytes::viewOf("PNG")).error().reason == Reason::malformed);
    CHECK(seal(sampleJpeg({.before = segment(0xe1, bytes::viewOf("Exif"))})).error().reason == Reason::refused);
}

TEST_CASE("a changed, swapped, missing or added chunk opens nothing", "[photos][errors]")
{
    const SealedPhoto photo = sealedOf(200'000);
    REQUIRE(photo.chunks.size() == 4);
    std::vector<bytes::Bytes> chunks = photo.chunks;

    SECTION("a changed byte, in every chunk, with and without a manifest that fits")
    {
        const auto which = GENERATE(0u, 1u, 2u, 3u);
        const auto place = GENERATE(std::size_t{0}, std::size_t{30}, std::size_t{1} << 15);
        chunks[which][std::min(place, chunks[which].size() - 1)] ^= 1;
        CHECK(reasonOf(open(photo.manifest, chunks)) == Reason::forged);
        CHECK(reasonOf(open(refitted(photo.manifest, chunks), chunks)) == Reason::forged);
        CHECK(checkChunk(photo.manifest, which, chunks[which]).error().reason == Reason::forged);
    }
    SECTION("two chunks in each other's place")
    {
        std::swap(chunks[1], chunks[2]);
        CHECK(reasonOf(open(photo.manifest, chunks)) == Reason::forged);
        CHECK(reasonOf(open(refitted(photo.manifest, chunks), chunks)) == Reason::forged);
    }
    SECTION("cut at every chunk boundary")
    {
        for (std::size_t kept = 0; kept < 4; ++kept) {
            chunks.assign(photo.chunks.begin(), photo.chunks.begin() + static_cast<std::ptrdiff_t>(kept));
            CAPTURE(kept);
            CHECK(reasonOf(open(photo.manifest, chunks)) == Reason::notEnough);
            if (kept > 0)
                CHECK(reasonOf(open(refitted(photo.manifest, chunks), chunks)) == Reason::forged);
        }
    }
    SECTION("cut inside of the last chunk")
    {
        for (const std::size_t kept : {1u, 16u, 17u, 18u, 100u}) {
            chunks.back().resize(kept);
            CAPTURE(kept);
            CHECK(reasonOf(open(photo.manifest, chunks)) == Reason::forged);
            CHECK_FALSE(open(refitted(photo.manifest, chunks), chunks));
        }
    }
    SECTION("a chunk more")
    {
        chunks.push_back(chunks.back());
        CHECK(reasonOf(open(photo.manifest, chunks)) == Reason::notEnough);
        CHECK_FALSE(open(refitted(photo.manifest, chunks), chunks));
    }
    SECTION("bytes more")
    {
        chunks.back().push_back(0);
        CHECK(reasonOf(open(photo.manifest, chunks)) == Reason::forged);
        CHECK_FALSE(open(refitted(photo.manifest, chunks), chunks));
    }
    SECTION("under the name or the key of another")
    {
        Manifest other = photo.manifest;
        other.photo.value[0] ^= 1;
        CHECK(reasonOf(open(other, chunks)) == Reason::forged);
        other = photo.manifest;
        other.key[0] ^= 1;
        CHECK(reasonOf(open(other, chunks)) == Reason::forged);
        other = photo.manifest;
        other.hash[0] ^= 1;
        CHECK(reasonOf(open(other, chunks)) == Reason::forged);
    }
    CHECK(open(photo.manifest, photo.chunks));
    CHECK(checkChunk(photo.manifest, 4, photo.chunks[0]).error().reason == Reason::outOfRange);
}

TEST_CASE("whoever holds the key seals nothing that a reader of ours would take for a picture", "[photos][errors]")
{
    REQUIRE(crypto::initialise());
    const auto tryOf = [&](const bytes::Bytes& plaintext) {
        const SealedPhoto made = sealedAs(plaintext);
        return reasonOf(open(made.manifest, made.chunks));
    };
    const bytes::Bytes jpeg = sampleJpegOf(500);
    CHECK(tryOf(crypto::pad(jpeg, crypto::padmeSize(jpeg.size() + 1))) == Reason{});
    // Another padding would say more about its length, or hide bytes.
    CHECK(tryOf(crypto::pad(jpeg, 4096)) == Reason::malformed);
    CHECK(tryOf(jpeg) == Reason::malformed);
    const bytes::Bytes exif = sampleJpeg({.before = segment(0xe1, bytes::viewOf("Exif"))});
    CHECK(tryOf(crypto::pad(exif, crypto::padmeSize(exif.size() + 1))) == Reason::refused);
}
