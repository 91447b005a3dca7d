#pragma once
/// \file
/// Turns what a camera or a file gives into the one form of picture that core::photos seals: baseline JPEG with
/// nothing in it but the picture. It is drawn anew, so that place, time, device and profile of the source stay behind.
///
/// Every function may run on any thread, and takes long enough (decoding) not to be run on the one that draws.

#include "core/photos/jpeg_scan.h"

#include <QByteArray>
#include <QImage>
#include <QUrl>

namespace ebbline::camera {

inline constexpr qint64 largestSource = 48 * 1024 * 1024;  ///< bytes of a file; our own choice
inline constexpr qint64 mostPixels = 64'000'000;           ///< width times height of a source, before anything is decoded; our own choice

/// Reads at most largestSource bytes of a JPEG or PNG file, upright as its orientation says, no side longer than
/// photos::longestSide.
/// \returns Reason::notFound if the file cannot be read, Reason::tooLarge for too many bytes or pixels, Reason::unsupported
///          for another kind of file, Reason::malformed if it cannot be decoded, Reason::outOfRange for a picture too small.
Result<bytes::Bytes> photoFromFile(const QUrl& file);
/// The same of bytes at hand.
Result<bytes::Bytes> photoFromBytes(const QByteArray& source);
/// The same of a picture at hand, such as a frame of a camera. \returns Reason::malformed for a null picture.
Result<bytes::Bytes> photoFromImage(const QImage& picture);

/// Decodes JPEG bytes that scanJpeg() takes, no side longer than `longest` pixels. Null if they cannot be decoded.
QImage photoPicture(bytes::View jpeg, int longest);

}  // namespace ebbline::camera
