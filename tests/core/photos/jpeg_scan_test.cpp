// Which bytes pass for a picture of ours. Markers: ITU-T T.81, table B.1.

#include "core/photos/jpeg_scan.h"
#include "tests/core/photos/sample_jpeg.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

using namespace ebbline;
using namespace ebbline::photos;
using namespace ebbline::test;

namespace {

Reason refusalOf(const bytes::Bytes& jpeg)
{
    const auto scanned = scanJpeg(jpeg);
    REQUIRE_FALSE(scanned);
    return scanned.error().reason;
}

bytes::Bytes with(const bytes::Bytes& segment)
{
    return sampleJpeg({.before = segment});
}

}  // namespace

TEST_CASE("a plain picture passes and says its sides", "[photos]")
{
    CHECK(scanJpeg(sampleJpeg()) == JpegFacts{640, 800});
    CHECK(scanJpeg(sampleJpegOf(100)) == JpegFacts{640, 800});
    CHECK(scanJpeg(sampleJpeg({.components = 1})) == JpegFacts{640, 800});
    CHECK(scanJpeg(sampleJpeg({.width = longestSide, .height = shortestSide})) == JpegFacts{longestSide, shortestSide});
}

TEST_CASE("every segment that could say where, when or with what is refused", "[photos][errors]")
{
    for (int marker = 0xe1; marker <= 0xef; ++marker) {
        CAPTURE(marker);
        CHECK(refusalOf(with(segment(static_cast<std::uint8_t>(marker), bytes::viewOf("Exif")))) == Reason::refused);
        CHECK(refusalOf(with(segment(static_cast<std::uint8_t>(marker), {}))) == Reason::refused);
    }
    CHECK(refusalOf(with(segment(0xfe, bytes::viewOf("at home")))) == Reason::refused);
    // The one allowed application segment, with anything more than it needs.
    CHECK(refusalOf(with(segment(0xe0, bytes::viewOf(std::string_view("JFIF\0\1\1\0\0\1\0\1\1\1abc", 17))))) == Reason::refused);
    CHECK(refusalOf(with(segment(0xe0, bytes::viewOf(std::string_view("JFIF\0\1\1\0\0\1\0\1\0\0x", 15))))) == Reason::refused);
    CHECK(refusalOf(with(segment(0xe0, bytes::viewOf(std::string_view("JFXX\0\1\1\0\0\1\0\1\0\0", 14))))) == Reason::refused);
    bytes::Bytes twice = jfif();
    twice.insert(twice.end(), twice.begin(), twice.end());
    CHECK(refusalOf(with(twice)) == Reason::refused);
    CHECK(refusalOf(sampleJpeg({.after = {0}})) == Reason::refused);
    CHECK(refusalOf(sampleJpeg({.after = sampleJpeg()})) == Reason::refused);
}

TEST_CASE("forms of JPEG that our programs never write are refused", "[photos][errors]")
{
    for (const int frame : {0xc1, 0xc2, 0xc3, 0xc5, 0xc6, 0xc7, 0xc9, 0xca, 0xcb, 0xcd, 0xce, 0xcf}) {
        CAPTURE(frame);
        CHECK(refusalOf(sampleJpeg({.frame = static_cast<std::uint8_t>(frame)})) == Reason::unsupported);
    }
    CHECK(refusalOf(sampleJpeg({.components = 4})) == Reason::unsupported);
    CHECK(refusalOf(with(segment(0xcc, {}))) == Reason::unsupported);
    CHECK(refusalOf(with(segment(0xdc, bytes::Bytes{1, 0}))) == Reason::unsupported);
}

TEST_CASE("sides and sizes beyond the bounds are refused", "[photos][errors]")
{
    CHECK(refusalOf(sampleJpeg({.width = longestSide + 1})) == Reason::outOfRange);
    CHECK(refusalOf(sampleJpeg({.height = longestSide + 1})) == Reason::outOfRange);
    CHECK(refusalOf(sampleJpeg({.width = shortestSide - 1})) == Reason::outOfRange);
    CHECK(refusalOf(sampleJpeg({.height = 0})) == Reason::outOfRange);
    const std::size_t around = sampleJpeg({.coded = 0}).size();
    CHECK(scanJpeg(sampleJpeg({.coded = maximumJpeg - around})));
    CHECK(refusalOf(sampleJpeg({.coded = maximumJpeg - around + 1})) == Reason::tooLarge);
}

TEST_CASE("a picture cut off anywhere is no picture", "[photos][errors]")
{
    const bytes::Bytes whole = sampleJpegOf(200);
    for (std::size_t length = 0; length < whole.size(); ++length) {
        CAPTURE(length);
        CHECK_FALSE(scanJpeg(bytes::View(whole).first(length)));
    }
    CHECK(refusalOf(sampleJpeg({.coded = 0})) == Reason::malformed);
}

TEST_CASE("whatever the bytes, the scan ends and takes only what holds no metadata", "[photos]")
{
    REQUIRE(rc::check("one changed byte", [] {
        bytes::Bytes jpeg = sampleJpegOf(80);
        const auto place = *rc::gen::inRange<std::size_t>(0, jpeg.size());
        jpeg[place] = *rc::gen::arbitrary<std::uint8_t>();
        if (const auto facts = scanJpeg(jpeg)) {
            RC_ASSERT(std::max(facts->width, facts->height) <= longestSide);
            RC_ASSERT(std::min(facts->width, facts->height) >= shortestSide);
        }
    }));
    REQUIRE(rc::check("any bytes", [](const bytes::Bytes& jpeg) { RC_ASSERT(!scanJpeg(jpeg)); }));
}
