// Our drawing: it can be read, stays inside its frame, and the obliques mirror one another.
#include "app/face/face_art.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QFile>

using namespace ebbline;
using namespace ebbline::face;
using recovery::ChartView;

TEST_CASE("every stroke of the drawing is read and lies inside the frame", "[face]")
{
    const auto view = GENERATE(ChartView::front, ChartView::leftOblique, ChartView::rightOblique);
    const auto& art = artOf(view);

    REQUIRE(art.strokes.size() > 15);
    for (const auto& stroke : art.strokes) {
        const auto box = stroke.path.boundingRect();
        CHECK(box.left() >= 0);
        CHECK(box.right() <= recovery::chartWidth);
        CHECK(box.top() >= 0);
        CHECK(box.bottom() <= recovery::chartHeight);
    }
}

TEST_CASE("no path of the drawing is left out when it is read", "[face]")
{
    const auto name = GENERATE(QStringLiteral("front.svg"), QStringLiteral("left_oblique.svg"));
    QFile file(QStringLiteral(":/qt/qml/Ebbline/Face/art/") + name);
    REQUIRE(file.open(QIODevice::ReadOnly));
    const auto written = file.readAll().count("<path");
    const auto& art = artOf(name.startsWith(QLatin1Char('f')) ? ChartView::front : ChartView::leftOblique);

    CHECK(static_cast<qsizetype>(art.strokes.size() + art.cautions.size()) == written);
}

TEST_CASE("the right oblique is the mirror of the left one", "[face]")
{
    const auto& left = artOf(ChartView::leftOblique);
    const auto& right = artOf(ChartView::rightOblique);

    REQUIRE(left.strokes.size() == right.strokes.size());
    for (std::size_t i = 0; i < left.strokes.size(); ++i) {
        const auto a = left.strokes[i].path.boundingRect();
        const auto b = right.strokes[i].path.boundingRect();
        CHECK(std::abs(a.left() - (recovery::chartWidth - b.right())) < 1e-6);
        CHECK(std::abs(a.top() - b.top()) < 1e-6);
    }
}

TEST_CASE("each view marks the moving zone and the notch of the jaw", "[face]")
{
    CHECK(cautionAt(ChartView::front, {200, 330}) == Caution::movingZone);
    CHECK(cautionAt(ChartView::front, {271, 356}) == Caution::mandibularNotch);
    CHECK(cautionAt(ChartView::front, {129, 356}) == Caution::mandibularNotch);
    CHECK(cautionAt(ChartView::leftOblique, {150, 330}) == Caution::movingZone);
    CHECK(cautionAt(ChartView::leftOblique, {239, 362}) == Caution::mandibularNotch);
    CHECK(cautionAt(ChartView::rightOblique, {250, 330}) == Caution::movingZone);
    CHECK_FALSE(cautionAt(ChartView::front, {290, 180}).has_value());
}

TEST_CASE("path data of any other kind is refused, not half drawn", "[face]")
{
    const auto data = GENERATE("", "10 10", "M 1", "M1 2 C3 4 5 6 7", "M1 2 q3 4 5 6", "M1 2 L3", "L1 2", "M1 2 L3 x");
    CHECK_FALSE(pathFromData(QString::fromLatin1(data)).has_value());
}

TEST_CASE("a path may go on without repeating its letter", "[face]")
{
    const auto path = pathFromData(QStringLiteral("M0 0 L10 0 10 10 0 10 Z"));

    REQUIRE(path.has_value());
    CHECK(path->boundingRect() == QRectF(0, 0, 10, 10));
}
