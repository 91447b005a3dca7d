#pragma once
/// \file
/// Bytes that are a JPEG by their form, segment by segment, without a picture worth seeing in them.

#include "core/bytes/reader.h"

#include <random>

namespace ebbline::test {

struct JpegParts {
    std::uint16_t width = 640, height = 800;
    std::uint8_t frame = 0xc0;       ///< marker of the frame
    std::uint8_t components = 3;
    bytes::Bytes before{};           ///< put in after SOI
    bytes::Bytes after{};            ///< put behind EOI
    std::size_t coded = 1000;        ///< bytes of the coded data
    unsigned seed = 1;
};

inline bytes::Bytes segment(std::uint8_t marker, bytes::View contents)
{
    return bytes::Writer().u8(0xff).u8(marker).u16(static_cast<std::uint16_t>(contents.size() + 2)).raw(contents).bytes();
}

inline bytes::Bytes jfif()
{
    return segment(0xe0, bytes::viewOf(std::string_view("JFIF\0\1\1\0\0\1\0\1\0\0", 14)));
}

inline bytes::Bytes sampleJpeg(const JpegParts& parts = {})
{
    bytes::Writer frame;
    frame.u8(8).u16(parts.height).u16(parts.width).u8(parts.components);
    for (std::uint8_t i = 0; i < parts.components; ++i)
        frame.u8(static_cast<std::uint8_t>(i + 1)).u8(i == 0 ? 0x22 : 0x11).u8(i == 0 ? 0 : 1);
    bytes::Writer scan;
    scan.u8(parts.components);
    for (std::uint8_t i = 0; i < parts.components; ++i)
        scan.u8(static_cast<std::uint8_t>(i + 1)).u8(i == 0 ? 0 : 0x11);
    scan.u8(0).u8(63).u8(0);
    bytes::Writer codes;
    codes.u8(0).u8(1).raw(bytes::Bytes(15, 0)).u8(7);
    bytes::Writer out;
    out.u8(0xff).u8(0xd8).raw(parts.before);
    out.raw(segment(0xdb, bytes::Writer().u8(0).raw(bytes::Bytes(64, 3)).bytes()));
    out.raw(segment(parts.frame, frame.bytes()));
    out.raw(segment(0xc4, codes.bytes()));
    out.raw(segment(0xda, scan.bytes()));
    std::mt19937 random(parts.seed);
    for (std::size_t i = 0; i < parts.coded; ++i)
        out.u8(static_cast<std::uint8_t>(random() % 255));  // never 0xff
    out.u8(0xff).u8(0xd9).raw(parts.after);
    return std::move(out).bytes();
}

/// As our programs write it: with a JFIF segment, so large that it is sealed in so many chunks or more.
inline bytes::Bytes sampleJpegOf(std::size_t codedBytes, unsigned seed = 1)
{
    JpegParts parts;
    parts.before = jfif();
    parts.coded = codedBytes;
    parts.seed = seed;
    return sampleJpeg(parts);
}

}  // namespace ebbline::test
