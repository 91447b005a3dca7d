#include "app/desk/model/qr_encode.h"

#include <qrencode.h>

#include <memory>

namespace ebbline::deskapp {

QrMatrix encodeQr(const std::string& text)
{
    QrMatrix matrix;
    if (text.empty()) {
        return matrix;
    }
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
        QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_M), &QRcode_free);
    if (!code) {
        return matrix;
    }
    matrix.size = code->width;
    const auto count = code->width * code->width;
    matrix.dark.reserve(count);
    for (int i = 0; i < count; ++i) {
        matrix.dark.append((code->data[i] & 1) != 0);  // the library's lowest bit is the module's colour
    }
    return matrix;
}

}  // namespace ebbline::deskapp
