// What a camera or a file gives becomes a plain picture: upright, small enough, with nothing else in it; or it is refused.
#include "platform/camera/photo_intake.h"
#include "tests/platform/camera/marked_pictures.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QFile>
#include <QTemporaryDir>

#include <random>

using namespace ebbline;
using camera::photoFromBytes;
using camera::photoFromImage;
using test::encoded;
using test::phoneJpeg;
using test::quarters;

namespace {

QByteArray asBytes(const bytes::Bytes& jpeg)
{
    return {reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())};
}

/// The colour in the middle of a quarter, as a letter: losses of JPEG do not matter.
char colourAt(const QImage& image, int quarter)
{
    const QColor colour = image.pixelColor(image.width() * (quarter % 2 == 0 ? 1 : 3) / 4, image.height() * (quarter < 2 ? 1 : 3) / 4);
    if (colour.red() > 150)
        return colour.green() > 150 ? 'y' : 'r';
    return colour.green() > 120 ? 'g' : 'b';
}

std::string colours(const QImage& image)
{
    std::string found;
    for (int quarter = 0; quarter < 4; ++quarter)
        found += colourAt(image, quarter);
    return found;
}

/// A PNG whose header says a size that is not there.
QByteArray pngOf(quint32 width, quint32 height)
{
    QByteArray png = encoded(quarters(32, 32), "png");
    qToBigEndian(width, png.data() + 16);
    qToBigEndian(height, png.data() + 20);
    // The sum over the header's piece, so that nothing else is wrong with it (PNG, annex D: CRC-32).
    quint32 sum = 0xffffffffu;
    for (qsizetype i = 12; i < 29; ++i) {
        sum ^= static_cast<quint8>(png[i]);
        for (int bit = 0; bit < 8; ++bit)
            sum = (sum & 1) != 0 ? 0xedb88320u ^ (sum >> 1) : sum >> 1;
    }
    qToBigEndian(sum ^ 0xffffffffu, png.data() + 29);
    return png;
}

}  // namespace

TEST_CASE("nothing of place, time, device or profile survives the intake of a picture", "[camera][photo]")
{
    const QByteArray source = GENERATE(phoneJpeg(quarters(400, 300), 1), encoded(quarters(400, 300), "png"));
    REQUIRE(source.contains(test::deviceName));
    const auto jpeg = photoFromBytes(source);
    REQUIRE(jpeg);
    CHECK(photos::scanJpeg(*jpeg) == photos::JpegFacts{400, 300});
    for (const char* trace : {test::deviceName, test::placeName, "Exif", "ICC_PROFILE", "Description", "MM"})
        CHECK_FALSE(asBytes(*jpeg).contains(trace));
    CHECK(colours(camera::photoPicture(*jpeg, 400)) == "rgby");
}

TEST_CASE("a picture comes out upright, whichever way the phone was held", "[camera][photo]")
{
    struct Turn {
        quint16 orientation;
        bool across;
        std::string upright;
    };
    // Exif 2.3, tag 0x0112: where row 0 and column 0 of the file belong in the scene.
    const Turn turn = GENERATE(Turn{1, true, "rgby"}, Turn{2, true, "gryb"}, Turn{3, true, "ybgr"}, Turn{4, true, "byrg"},
                               Turn{5, false, "rbgy"}, Turn{6, false, "bryg"}, Turn{7, false, "ygbr"}, Turn{8, false, "gyrb"});
    CAPTURE(turn.orientation);
    const auto jpeg = photoFromBytes(phoneJpeg(quarters(400, 300), turn.orientation));
    REQUIRE(jpeg);
    CHECK(photos::scanJpeg(*jpeg) == (turn.across ? photos::JpegFacts{400, 300} : photos::JpegFacts{300, 400}));
    CHECK(colours(camera::photoPicture(*jpeg, 400)) == turn.upright);
}

TEST_CASE("a large picture is made smaller, in its own shape", "[camera][photo]")
{
    const auto jpeg = photoFromBytes(phoneJpeg(quarters(4000, 3000), 6));
    REQUIRE(jpeg);
    CHECK(photos::scanJpeg(*jpeg) == photos::JpegFacts{1536, 2048});
    const QImage small = camera::photoPicture(*jpeg, 320);
    CHECK(small.size() == QSize(240, 320));
    CHECK(colours(small) == "bryg");
}

TEST_CASE("a picture that is hard to pack is packed harder, not refused", "[camera][photo]")
{
    QImage noise(2048, 2048, QImage::Format_RGB32);
    std::mt19937 random(7);
    for (int y = 0; y < noise.height(); ++y)
        for (int x = 0; x < noise.width(); ++x)
            noise.setPixel(x, y, static_cast<uint>(random()) | 0xff000000u);
    const auto jpeg = photoFromImage(noise);
    REQUIRE(jpeg);
    CHECK(jpeg->size() <= photos::maximumJpeg);
    CHECK(photos::scanJpeg(*jpeg) == photos::JpegFacts{2048, 2048});
}

TEST_CASE("grey, clear and foreign pixels become a plain picture too", "[camera][photo]")
{
    const auto format = GENERATE(QImage::Format_Grayscale8, QImage::Format_ARGB32, QImage::Format_RGB16, QImage::Format_RGBA64,
                                 QImage::Format_Indexed8, QImage::Format_Mono);
    CAPTURE(format);
    QImage image = quarters(64, 48).convertToFormat(format);
    image.setDevicePixelRatio(2);
    image.setColorSpace(QColorSpace(QColorSpace::AdobeRgb));
    const auto jpeg = photoFromImage(image);
    REQUIRE(jpeg);
    CHECK(photos::scanJpeg(*jpeg) == photos::JpegFacts{64, 48});
}

TEST_CASE("what is no picture, or more than a picture, is refused with its reason", "[camera][photo]")
{
    const QByteArray good = phoneJpeg(quarters(64, 64), 1);
    CHECK(photoFromBytes({}).error().reason == Reason::unsupported);
    CHECK(photoFromBytes("%PDF-1.7").error().reason == Reason::unsupported);
    CHECK(photoFromBytes("<svg xmlns='http://www.w3.org/2000/svg' width='99' height='99'/>").error().reason == Reason::unsupported);
    CHECK(photoFromBytes("GIF89a" + QByteArray(400, '\0')).error().reason == Reason::unsupported);
    CHECK(photoFromBytes(good.left(40)).error().reason == Reason::malformed);
    CHECK(photoFromBytes("\xff\xd8\xff" + QByteArray(4000, '\x55')).error().reason == Reason::malformed);
    CHECK(photoFromBytes(pngOf(32, 32)).has_value());
    CHECK(photoFromBytes(pngOf(60'000, 60'000)).error().reason == Reason::tooLarge);
    CHECK(photoFromBytes(good + QByteArray(camera::largestSource, 'x')).error().reason == Reason::tooLarge);
    CHECK(photoFromBytes(encoded(quarters(15, 300), "png")).error().reason == Reason::outOfRange);
    // Long and thin: nothing would be left of its short side.
    CHECK(photoFromBytes(encoded(quarters(20'000, 100), "png")).error().reason == Reason::outOfRange);
    CHECK(photoFromImage({}).error().reason == Reason::malformed);
}

TEST_CASE("spoiled bytes never give anything that core would refuse", "[camera][photo]")
{
    std::mt19937 random(20270301);
    int taken = 0, refused = 0;
    for (const char* kind : {"jpeg", "png"}) {
        const QByteArray good = encoded(quarters(120, 90), kind);
        for (int round = 0; round < 200; ++round) {
            QByteArray bad = good;
            for (unsigned i = 0; i < 1 + random() % 6; ++i)
                bad[static_cast<qsizetype>(random() % static_cast<unsigned>(bad.size()))] = static_cast<char>(random());
            if (random() % 3 == 0)
                bad.truncate(static_cast<qsizetype>(random() % static_cast<unsigned>(bad.size())));
            const auto jpeg = photoFromBytes(bad);
            (jpeg ? taken : refused) += 1;
            if (jpeg)
                CHECK(photos::scanJpeg(*jpeg).has_value());
        }
    }
    CHECK(taken > 0);
    CHECK(refused > 0);
}

TEST_CASE("a file is read as far as it may be, and one that is not there is said", "[camera][photo]")
{
    QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("me.jpg")));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(phoneJpeg(quarters(200, 100), 8));
    file.close();
    const auto jpeg = camera::photoFromFile(QUrl::fromLocalFile(file.fileName()));
    REQUIRE(jpeg);
    CHECK(photos::scanJpeg(*jpeg) == photos::JpegFacts{100, 200});
    CHECK(camera::photoFromFile(QUrl::fromLocalFile(folder.filePath(QStringLiteral("none.jpg")))).error().reason == Reason::notFound);
    CHECK(camera::photoFromFile(QUrl::fromLocalFile(folder.path())).error().reason == Reason::notFound);
    CHECK(camera::photoFromFile(QUrl(QStringLiteral("https://example.invalid/me.jpg"))).error().reason == Reason::notFound);

    REQUIRE(file.open(QIODevice::WriteOnly));
    REQUIRE(file.resize(camera::largestSource + 2));
    file.close();
    CHECK(camera::photoFromFile(QUrl::fromLocalFile(file.fileName())).error().reason == Reason::tooLarge);
}

TEST_CASE("bytes that are not a plain picture are not decoded for the screen", "[camera][photo]")
{
    const QByteArray marked = phoneJpeg(quarters(64, 64), 1);
    CHECK(camera::photoPicture(bytes::View(reinterpret_cast<const std::uint8_t*>(marked.data()), static_cast<std::size_t>(marked.size())), 64).isNull());
    CHECK(camera::photoPicture({}, 64).isNull());
}
