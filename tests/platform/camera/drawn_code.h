#pragma once
/// \file
/// A QR code as a picture, for tests of what reads one.

#include <qrencode.h>

#include <QImage>

#include <memory>
#include <stdexcept>
#include <string>

namespace ebbline::test {

/// The code as black modules of some pixels on white, with the quiet zone of four modules that
/// ISO/IEC 18004:2015, 6.3.8 asks for. Throws std::runtime_error for a text that no code holds.
inline QImage drawnCode(const std::string& text, int pixels = 4)
{
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
        QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_M), &QRcode_free);
    if (!code)
        throw std::runtime_error("drawn code: the text fits into none");
    QImage modules(code->width + 8, code->width + 8, QImage::Format_Grayscale8);
    modules.fill(Qt::white);
    for (int y = 0; y < code->width; ++y)
        for (int x = 0; x < code->width; ++x)
            if (code->data[y * code->width + x] & 1)
                modules.setPixel(x + 4, y + 4, qRgb(0, 0, 0));
    return modules.scaled(modules.size() * pixels);
}

}  // namespace ebbline::test
