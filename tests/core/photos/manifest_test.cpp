// The manifest to the byte: docs/formats/photos.md.

#include "core/photos/manifest.h"

#include "core/bytes/reader.h"
#include "core/crypto/stream.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

using namespace ebbline;
using namespace ebbline::photos;

namespace {

Manifest sample(std::uint32_t size = 24 + 2 * (chunkPlaintext + 17))
{
    Manifest manifest;
    manifest.photo.value.fill(7);
    manifest.key.fill(8);
    manifest.size = size;
    manifest.hash.fill(9);
    manifest.chunkHashes.resize(Shape::of(size)->chunks());
    return manifest;
}

}  // namespace

TEST_CASE("a manifest is as long as the format says and reads as it was written", "[photos]")
{
    const Manifest manifest = sample();
    const bytes::Bytes encoded = encode(manifest);
    CHECK(encoded.size() == 1 + 16 + 32 + 4 + 32 + 2 + 2 * 16);
    CHECK(encoded.front() == 1);
    CHECK(decodeManifest(encoded) == manifest);
}

TEST_CASE("a manifest that does not add up is refused", "[photos][errors]")
{
    const bytes::Bytes encoded = encode(sample());
    for (std::size_t length = 0; length < encoded.size(); ++length)
        CHECK(decodeManifest(bytes::View(encoded).first(length)).error().reason == Reason::malformed);
    bytes::Bytes longer = encoded;
    longer.push_back(0);
    CHECK(decodeManifest(longer).error().reason == Reason::malformed);
    bytes::Bytes newer = encoded;
    newer.front() = 2;
    CHECK(decodeManifest(newer).error().reason == Reason::unsupported);
    Manifest nameless = sample();
    nameless.photo = {};
    CHECK(decodeManifest(encode(nameless)).error().reason == Reason::malformed);
    Manifest other = sample();
    other.chunkHashes.emplace_back();
    CHECK(decodeManifest(encode(other)).error().reason == Reason::outOfRange);
    other = sample();
    other.size = 41;
    CHECK(decodeManifest(encode(other)).error().reason == Reason::outOfRange);
}

TEST_CASE("the chunks of every possible size add up to it", "[photos]")
{
    constexpr std::size_t whole = chunkPlaintext + 17;
    CHECK_FALSE(Shape::of(0));
    CHECK_FALSE(Shape::of(24 + 17));
    CHECK(Shape::of(24 + 17 + 1)->chunks() == 1);
    CHECK(Shape::of(24 + whole)->chunks() == 1);
    CHECK_FALSE(Shape::of(24 + whole + 17));
    CHECK(Shape::of(24 + whole + 18)->chunks() == 2);
    CHECK(Shape::of(24 + mostChunks * whole)->chunks() == mostChunks);
    CHECK_FALSE(Shape::of(24 + mostChunks * whole + 18));
    CHECK_FALSE(Shape::of(~std::uint64_t{0}));
    REQUIRE(rc::check("sizes", [] {
        const auto size = *rc::gen::inRange<std::uint64_t>(0, 24 + mostChunks * whole + 100);
        const auto shape = Shape::of(size);
        if (!shape)
            return;
        std::size_t sum = 0;
        for (std::uint32_t number = 0; number < shape->chunks(); ++number) {
            RC_ASSERT(shape->chunkSize(number) <= largestChunk);
            RC_ASSERT(shape->chunkSize(number) > crypto::streamOverhead);
            sum += shape->chunkSize(number);
        }
        RC_ASSERT(sum == size);
        RC_ASSERT(shape->plaintextSize() + 24 + 17 * shape->chunks() == size);
    }));
}
