#pragma once
/// \file
/// Whether bytes are a picture as our own programs write it: baseline JPEG (ITU-T T.81, Annex B) with nothing in
/// it but the picture. Whatever else a camera leaves in a file (place, time, device, thumbnails, comments, profiles)
/// sits in segments that are refused here, by name; so do forms of JPEG that we never write. Nothing is decoded.

#include "core/bytes/bytes.h"
#include "core/result/result.h"

namespace ebbline::photos {

inline constexpr std::size_t maximumJpeg = 4u * 1024 * 1024;  ///< bytes; our own choice
inline constexpr std::uint16_t longestSide = 2048;            ///< pixels; our own choice
inline constexpr std::uint16_t shortestSide = 16;             ///< pixels

struct JpegFacts {
    std::uint16_t width = 0;   ///< pixels
    std::uint16_t height = 0;  ///< pixels
    bool operator==(const JpegFacts&) const = default;
};

/// \returns Reason::tooLarge over maximumJpeg, Reason::outOfRange for sides beyond the bounds above,
///          Reason::refused for metadata or bytes behind the picture, Reason::unsupported for another form of JPEG
///          (progressive, lossless, arithmetic, 12 bits, CMYK), Reason::malformed for anything that is not JPEG.
Result<JpegFacts> scanJpeg(bytes::View input);

}  // namespace ebbline::photos
