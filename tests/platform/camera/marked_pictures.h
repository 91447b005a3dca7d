#pragma once
/// \file
/// Pictures as a phone writes them: with orientation, place, time and device in the file, for tests of what is left of these.

#include <QBuffer>
#include <QColorSpace>
#include <QImage>
#include <QImageWriter>
#include <QtEndian>

namespace ebbline::test {

inline constexpr auto deviceName = "Lantern 7";
inline constexpr auto placeName = "54.3213N";

/// Four flat quarters: red, green above blue, yellow.
inline QImage quarters(int width, int height)
{
    QImage image(width, height, QImage::Format_RGB32);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            image.setPixel(x, y, y < height / 2 ? (x < width / 2 ? qRgb(220, 20, 20) : qRgb(20, 180, 20))
                                                : (x < width / 2 ? qRgb(20, 20, 220) : qRgb(220, 220, 20)));
    return image;
}

inline QByteArray encoded(QImage image, const char* kind)
{
    // Texts and a profile travel in the file as far as the kind has room for them.
    image.setText(QStringLiteral("Description"), QString::fromLatin1(placeName));
    image.setText(QStringLiteral("Model"), QString::fromLatin1(deviceName));
    image.setColorSpace(QColorSpace(QColorSpace::DisplayP3));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QImageWriter writer(&buffer, kind);
    writer.setQuality(95);
    writer.write(image);
    return bytes;
}

/// A JPEG with an Exif segment (Exif 2.3: orientation 0x0112, model 0x0110, a directory of the place 0x8825).
inline QByteArray phoneJpeg(const QImage& image, quint16 orientation)
{
    const auto u16 = [](quint16 value) { const quint16 big = qToBigEndian(value); return QByteArray(reinterpret_cast<const char*>(&big), 2); };
    const auto u32 = [](quint32 value) { const quint32 big = qToBigEndian(value); return QByteArray(reinterpret_cast<const char*>(&big), 4); };
    const QByteArray model = QByteArray(deviceName) + QByteArray(1, '\0');
    const QByteArray place = QByteArray(placeName) + QByteArray(1, '\0');
    constexpr quint32 first = 8, entries = 3;
    const quint32 modelAt = first + 2 + entries * 12 + 4;
    const quint32 placeDirectory = modelAt + static_cast<quint32>(model.size());
    const quint32 placeAt = placeDirectory + 2 + 12 + 4;
    const QByteArray tiff = "MM" + u16(42) + u32(first) + u16(entries)
                            + u16(0x0110) + u16(2) + u32(static_cast<quint32>(model.size())) + u32(modelAt)
                            + u16(0x0112) + u16(3) + u32(1) + u16(orientation) + u16(0)
                            + u16(0x8825) + u16(4) + u32(1) + u32(placeDirectory) + u32(0) + model
                            + u16(1) + u16(0x001b) + u16(2) + u32(static_cast<quint32>(place.size())) + u32(placeAt) + u32(0) + place;
    const QByteArray exif = QByteArray("Exif\0\0", 6) + tiff;
    QByteArray jpeg = encoded(image, "jpeg");
    jpeg.insert(2, QByteArray("\xff\xe1", 2) + u16(static_cast<quint16>(exif.size() + 2)) + exif);
    return jpeg;
}

}  // namespace ebbline::test
