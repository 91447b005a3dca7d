#include "platform/camera/qr_reader.h"

#define ZX_USE_UTF8 1
#include <ZXing/ReadBarcode.h>
#if __has_include(<ZXing/ReaderOptions.h>)
#include <ZXing/ReaderOptions.h>
#endif

#include <exception>
#include <string>

namespace ebbline::camera {

QString qrTextIn(const QImage& picture)
{
    if (picture.isNull())
        return {};
    const QImage grey = picture.convertToFormat(QImage::Format_Grayscale8);
    try {
        const ZXing::ImageView view(grey.constBits(), grey.width(), grey.height(), ZXing::ImageFormat::Lum,
                                    static_cast<int>(grey.bytesPerLine()));
#if __has_include(<ZXing/ReaderOptions.h>)
        ZXing::ReaderOptions options;
#else
        ZXing::DecodeHints options;
#endif
        options.setFormats(ZXing::BarcodeFormat::QRCode);
        options.setTryHarder(true);
        const auto found = ZXing::ReadBarcode(view, options);
        if (!found.isValid())
            return {};
        const auto& bytes = found.bytes();
        return QString::fromUtf8(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size()));
    } catch (const std::exception&) {
        return {};
    }
}

}  // namespace ebbline::camera
