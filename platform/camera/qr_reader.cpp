#include "platform/camera/qr_reader.h"

#define ZX_USE_UTF8 1
#include <ZXing/ReadBarcode.h>
#if __has_include(<ZXing/ReaderOptions.h>)
#include <ZXing/ReaderOptions.h>
#endif

#include <algorithm>
#include <exception>

namespace ebbline::camera {

namespace {

/// \pre an image of 8 bit grey
QString textIn(const QImage& grey)
{
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
}

}  // namespace

QString qrTextIn(const QImage& picture)
{
    if (picture.isNull())
        return {};
    try {
        const QImage grey = picture.convertToFormat(QImage::Format_Grayscale8);
        if (const QString text = textIn(grey); !text.isEmpty())
            return text;
        // Averaging four pixels takes out the noise of a frame in poor light.
        const QImage smaller = grey.scaled(std::max(1, grey.width() / 2), std::max(1, grey.height() / 2),
                                           Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
        return textIn(smaller.convertToFormat(QImage::Format_Grayscale8));
    } catch (const std::exception&) {
        return {};
    }
}

}  // namespace ebbline::camera
