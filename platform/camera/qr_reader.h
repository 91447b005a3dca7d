#pragma once
/// \file
/// Reads a QR code from a picture: a camera's frame or an image file.

#include <QImage>
#include <QString>

namespace ebbline::camera {

/// The text of the first QR code in the picture; empty if there is none that can be read.
QString qrTextIn(const QImage& picture);

}  // namespace ebbline::camera
