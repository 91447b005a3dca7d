// Codes as a camera sees them: turned, small, blurred, in poor light. And pictures without one.

#include "platform/camera/qr_reader.h"

#include "core/crypto/crypto.h"
#include "core/pairing/code.h"
#include "tests/platform/camera/drawn_code.h"

#include <catch2/catch_test_macros.hpp>

#include <QTransform>

#include <random>

using namespace ebbline;

namespace {

std::string offerText()
{
    REQUIRE(crypto::initialise());
    pairing::Offer offer;
    offer.expires = clock::Instant{std::chrono::hours{500'000}};
    offer.id = crypto::randomArray<8>();
    offer.secret = crypto::randomArray<16>();
    offer.clinicRoot.value = crypto::randomArray<32>();
    offer.hub = "hub.example:8443";
    return pairing::toQrText(offer);
}

QImage inPoorLight(const QImage& picture, unsigned seed)
{
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0, 12);
    QImage made = picture.convertToFormat(QImage::Format_Grayscale8);
    for (int y = 0; y < made.height(); ++y)
        for (int x = 0; x < made.width(); ++x) {
            const double dim = 40 + qGray(made.pixel(x, y)) * (0.25 + 0.3 * x / made.width()) + noise(random);
            const int value = static_cast<int>(std::clamp(dim, 0.0, 255.0));
            made.setPixel(x, y, qRgb(value, value, value));
        }
    return made;
}

}  // namespace

TEST_CASE("the clinic's code is read as it was written", "[camera]")
{
    const std::string text = offerText();
    CHECK(camera::qrTextIn(test::drawnCode(text)).toStdString() == text);
}

TEST_CASE("the phone may be held at any angle", "[camera]")
{
    const std::string text = offerText();
    for (const int degrees : {7, 45, 90, 180, 200, 315}) {
        QImage turned(900, 900, QImage::Format_Grayscale8);
        turned.fill(Qt::white);
        const QImage code = test::drawnCode(text).transformed(QTransform().rotate(degrees), Qt::SmoothTransformation)
                                .convertToFormat(QImage::Format_ARGB32);
        for (int y = 0; y < code.height() && y < 900; ++y)
            for (int x = 0; x < code.width() && x < 900; ++x)
                if (qAlpha(code.pixel(x, y)) > 127)
                    turned.setPixel(x, y, code.pixel(x, y));
        INFO(degrees << " degrees");
        CHECK(camera::qrTextIn(turned).toStdString() == text);
    }
}

TEST_CASE("dim, uneven and noisy light does not matter", "[camera]")
{
    const std::string text = offerText();
    for (unsigned seed = 1; seed <= 5; ++seed) {
        INFO("seed " << seed);
        CHECK(camera::qrTextIn(inPoorLight(test::drawnCode(text, 6), seed)).toStdString() == text);
    }
}

TEST_CASE("a picture without a code gives nothing", "[camera]")
{
    CHECK(camera::qrTextIn(QImage()).isEmpty());
    QImage grey(640, 480, QImage::Format_RGB32);
    grey.fill(Qt::gray);
    CHECK(camera::qrTextIn(grey).isEmpty());
    CHECK(camera::qrTextIn(inPoorLight(grey, 9)).isEmpty());
    CHECK(camera::qrTextIn(QImage(1, 1, QImage::Format_Mono)).isEmpty());
}

TEST_CASE("half a code gives nothing rather than half a text", "[camera]")
{
    const QImage whole = test::drawnCode(offerText());
    CHECK(camera::qrTextIn(whole.copy(0, 0, whole.width(), whole.height() / 2)).isEmpty());
}

TEST_CASE("any other code is read too, and left to the caller to refuse", "[camera]")
{
    const auto text = camera::qrTextIn(test::drawnCode("gr\xc3\xbc\xc3\x9f dich"));
    CHECK(text == QStringLiteral("grüß dich"));
    CHECK_FALSE(pairing::fromQrText(text.toStdString(), clock::Instant{}));
}
