// Photographs on the follow-up sheet: only when asked for, in colour, and at one height.
#include "app/desk/model/course_look.h"
#include "app/desk/model/words.h"
#include "app/face/drawn_face.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QTemporaryDir>
#include <QTest>

using namespace ebbline;

TEST_CASE("photographs are on the sheet only when asked for, the first and the last of each view", "[desk][sheet][photos]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto tomas = clinic.course("Tomas Reyl");
    program->openSheet(deskapp::keyOf(tomas));
    auto& sheet = *program->sheet();
    const auto pages = sheet.pageCount();
    CHECK(sheet.hasPhotoChoice());
    CHECK_FALSE(sheet.hasPhotos());
    CHECK_FALSE(sheet.text().contains(QLatin1String("Photograph")));

    sheet.setPhotos(true);
    QTemporaryDir folder;
    CHECK_FALSE(sheet.write(folder.filePath(QStringLiteral("sheet.pdf"))));  // while pictures are being opened
    REQUIRE(QTest::qWaitFor([&] { return !sheet.isWorking(); }));

    CHECK(sheet.pageCount() > pages);
    const auto offset = deskapp::leftToRight("UTC+1");
    CHECK(sheet.text().contains(QStringLiteral("Photographs, Front: Day 0, 16 Mar 2027, 20:00 %1, and Day 6, 22 Mar 2027, 11:00 %1. As they were taken").arg(offset)));
    CHECK(sheet.text().contains(QLatin1String("Photographs, From the patient's left: ")));
    CHECK(sheet.text().contains(QLatin1String("Photograph, From the patient's right: Day 0")));

    for (const auto& photo : program->workplace().desk().photos(tomas)) {
        if (photo.pose == photos::Pose::front && photo.isHere()) {
            REQUIRE(program->workplace().desk().markEyes(tomas, photo.photo, clinic.eyesIn(photo.photo)));
        }
    }
    program->openSheet(deskapp::keyOf(tomas));
    REQUIRE(QTest::qWaitFor([&] { return !sheet.isWorking(); }));
    CHECK(sheet.text().contains(QLatin1String("Aligned by the eyes")));

    program->openSheet(deskapp::keyOf(clinic.course("Ines Varga")));
    CHECK_FALSE(sheet.hasPhotos());
    program->openSheet(deskapp::keyOf(clinic.course("Mirela Sand")));
    CHECK_FALSE(sheet.hasPhotoChoice());
}

TEST_CASE("the photographs of a sheet fit on either paper, in colour, the eyes of both at one height", "[desk][sheet][photos]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto letter = GENERATE(false, true);
    const QSizeF page = letter ? QSizeF(816, 1056) : QSizeF(794, 1123);
    auto content = deskapp::sheetOf(program->workplace(), clinic.course("Tomas Reyl"));
    REQUIRE(content);
    const auto one = face::drawnFace({.turned = 3});
    const auto other = face::drawnFace({.marked = 0.7, .turned = -6, .size = 0.8});
    const auto eyesOf = [](const face::DrawnPicture& drawn) {
        return photos::Eyes{deskapp::spotOf(drawn.leftEye, drawn.picture.size()), deskapp::spotOf(drawn.rightEye, drawn.picture.size())};
    };
    deskapp::SheetPhotoPair pair{QStringLiteral("Front"), {{}, QStringLiteral("Day 0"), {one.picture, eyesOf(one)}, false}, {}};
    pair.last = deskapp::SheetPhoto{{}, QStringLiteral("Day 6"), {other.picture, eyesOf(other)}, false};
    content->photos = {pair, pair, pair};

    const deskapp::SheetLayout layout(*content, page, false);

    int coloured = 0;
    int outside = 0;
    for (int i = 0; i < layout.pageCount(); ++i) {
        QImage picture(page.toSize(), QImage::Format_RGB32);
        QPainter painter(&picture);
        layout.paint(painter, i);
        painter.end();
        for (int y = 0; y < picture.height(); ++y) {
            for (int x = 0; x < picture.width(); ++x) {
                const QColor pixel = picture.pixelColor(x, y);
                if (pixel.saturation() > 20) {
                    ++coloured;
                    outside += x < 40 || x > page.width() - 40 || y > page.height() - 40 ? 1 : 0;
                }
            }
        }
    }
    CHECK(coloured > 10'000);
    CHECK(outside == 0);

    // One pair by itself: the later pupil stands where the earlier one does, in its own half.
    QImage picture(640, 240, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    deskapp::paintSheetPhotos(painter, QRectF(0, 0, 640, 236), pair, deskapp::paperFont(10));
    painter.end();
    const QRectF box(0, 0, 312, 236 - 18);
    const auto eye = deskapp::fitted(one.picture.size(), box).map(one.leftEye);
    CHECK(picture.pixelColor(eye.toPoint()).lightness() < 90);
    CHECK(picture.pixelColor((eye + QPointF(328, 0)).toPoint()).lightness() < 90);
}
