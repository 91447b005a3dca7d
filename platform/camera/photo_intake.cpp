#include "platform/camera/photo_intake.h"

#include <QBuffer>
#include <QColorSpace>
#include <QFile>
#include <QImageReader>
#include <QImageWriter>
#include <QPainter>

#include <array>

namespace ebbline::camera {

namespace {

constexpr int longest = photos::longestSide;
/// Tried in this order until the picture fits into photos::maximumJpeg. Common practice, no source.
constexpr std::array qualities{90, 80, 65, 50};

/// The decoder is chosen here by the first bytes, so that a file reaches no other one than its own.
QByteArray kindOf(const QByteArray& source)
{
    if (source.startsWith("\xff\xd8\xff"))
        return "jpeg";
    if (source.startsWith("\x89PNG\r\n\x1a\n"))
        return "png";
    return {};
}

QSize within(const QSize& size, int side)
{
    return std::max(size.width(), size.height()) <= side ? size : size.scaled(side, side, Qt::KeepAspectRatio);
}

/// \returns a null picture if it cannot be decoded.
QImage decoded(QByteArray source, const QByteArray& kind, int side, bool upright)
{
    QBuffer buffer(&source);
    QImageReader reader(&buffer, kind);
    reader.setAutoDetectImageFormat(false);
    reader.setAutoTransform(upright);
    if (const QSize size = reader.size(); size != within(size, side))
        reader.setScaledSize(within(size, side));  // JPEG is made smaller while it is decoded
    return reader.read();
}

}  // namespace

Result<bytes::Bytes> photoFromFile(const QUrl& url)
{
    // What a phone's picker gives need not be a file with a path.
    QFile file(url.isLocalFile() ? url.toLocalFile() : url.toString());
    if (!file.open(QIODevice::ReadOnly))
        return fail(Reason::notFound, "photo: the file cannot be read");
    const QByteArray source = file.read(largestSource + 1);
    if (file.error() != QFileDevice::NoError)
        return fail(Reason::notFound, "photo: the file cannot be read");
    return photoFromBytes(source);
}

Result<bytes::Bytes> photoFromBytes(const QByteArray& source)
{
    if (source.size() > largestSource)
        return fail(Reason::tooLarge, "photo: more bytes than a source may have");
    const QByteArray kind = kindOf(source);
    if (kind.isEmpty())
        return fail(Reason::unsupported, "photo: neither JPEG nor PNG");
    QByteArray head = source;
    QBuffer buffer(&head);
    QImageReader reader(&buffer, kind);
    reader.setAutoDetectImageFormat(false);
    const QSize size = reader.size();
    if (!size.isValid() || size.isEmpty())
        return fail(Reason::malformed, "photo: it has no size");
    if (qint64{size.width()} * size.height() > mostPixels)
        return fail(Reason::tooLarge, "photo: more pixels than a source may have");
    return photoFromImage(decoded(source, kind, longest, true));
}

Result<bytes::Bytes> photoFromImage(const QImage& picture)
{
    if (picture.isNull())
        return fail(Reason::malformed, "photo: it cannot be decoded");
    const QSize size = within(picture.size(), longest);
    if (std::min(size.width(), size.height()) < photos::shortestSide)
        return fail(Reason::outOfRange, "photo: too small");
    QImage source = picture.convertToFormat(QImage::Format_ARGB32);
    if (source.colorSpace().isValid() && source.colorSpace() != QColorSpace(QColorSpace::SRgb))
        source.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
    if (source.size() != size)
        source = source.scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    source.setDevicePixelRatio(1);
    // Drawn onto a sheet of its own: texts, profile and density of the source are not on it.
    QImage sheet(size, QImage::Format_RGB32);
    sheet.fill(Qt::white);
    QPainter painter(&sheet);
    painter.drawImage(0, 0, source);
    painter.end();
    Result<photos::JpegFacts> facts = fail(Reason::tooLarge, "photo: not tried");
    for (const int quality : qualities) {
        QByteArray out;
        QBuffer buffer(&out);
        QImageWriter writer(&buffer, "jpeg");
        writer.setQuality(quality);
        writer.setProgressiveScanWrite(false);
        if (!writer.write(sheet))
            return fail(Reason::storageFailed, "photo: it cannot be written as JPEG");
        bytes::Bytes jpeg(out.cbegin(), out.cend());
        facts = photos::scanJpeg(jpeg);
        if (facts)
            return jpeg;
        if (facts.error().reason != Reason::tooLarge)
            break;
    }
    return fail(facts.error());
}

QImage photoPicture(bytes::View jpeg, int side)
{
    if (!photos::scanJpeg(jpeg))
        return {};
    return decoded(QByteArray(reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())), "jpeg", side, false);
}

}  // namespace ebbline::camera
