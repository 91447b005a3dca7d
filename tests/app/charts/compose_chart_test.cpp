// The chart itself: axes that never move, forms that survive without colour.
#include "app/charts/axis_labels.h"
#include "app/charts/compose_chart.h"

#include <catch2/catch_test_macros.hpp>

#include <QCategoryAxis>
#include <QChart>
#include <QImage>
#include <QLineSeries>
#include <QLocale>
#include <QPainter>
#include <QScatterSeries>

using namespace ebbline;
using namespace ebbline::charts;

namespace {

CurvePicture picture(recovery::Side side)
{
    CurvePicture made;
    made.side = side;
    made.low = {{0, 0}, {21, 0}};
    made.median = {{0, 2}, {21, 0}};
    made.high = {{0, 5}, {21, 1}};
    made.runs = {{{0, 3}, {1, 4}}, {{5, 2}}};
    made.plainMarkers = {{0, 3}, {1, 4}};
    made.hollowMarkers = {{5, 2}};
    return made;
}

template <typename Series>
QList<Series*> seriesOf(const QChart& chart)
{
    QList<Series*> found;
    for (auto* series : chart.series()) {
        if (auto* cast = qobject_cast<Series*>(series)) {
            found.append(cast);
        }
    }
    return found;
}

}  // namespace

TEST_CASE("the axes hold day 0 to 21 and 0 to 10 points whatever was scored", "[charts][axes]")
{
    QChart chart;
    composeChart(chart, picture(recovery::Side::left), ChartStyle{});

    auto* days = qobject_cast<QCategoryAxis*>(chart.axes(Qt::Horizontal).value(0));
    auto* points = qobject_cast<QCategoryAxis*>(chart.axes(Qt::Vertical).value(0));
    REQUIRE(days != nullptr);
    REQUIRE(points != nullptr);
    CHECK(days->min() == axisStart);
    CHECK(days->max() == axisEnd);
    CHECK(days->categoriesLabels() == QStringList{"0", "1", "3", "7", "14", "21"});
    CHECK(points->min() == scoreFloor);
    CHECK(points->max() == scoreCeiling);
    CHECK(points->categoriesLabels() == QStringList{"0", "2", "4", "6", "8", "10"});
}

TEST_CASE("every number of the axes is there and none covers another, however low the chart", "[charts][axes]")
{
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(9);
    for (const double height : {72.0, 150.0, 320.0}) {
        const QRectF plot(30, 10, 240, height);
        const auto labels = axisLabels(plot, font);
        REQUIRE(labels.size() == 12);
        for (const auto& label : labels) {
            CHECK_FALSE(label.box.intersects(plot));
            for (const auto& other : labels) {
                CHECK((label.text == other.text || !label.box.intersects(other.box)));
            }
        }
    }
}

TEST_CASE("left is a solid line with round markers, right a dashed line with square ones", "[charts][forms]")
{
    QChart left;
    QChart right;
    composeChart(left, picture(recovery::Side::left), ChartStyle{});
    composeChart(right, picture(recovery::Side::right), ChartStyle{});

    CHECK(seriesOf<QLineSeries>(left).last()->pen().style() == Qt::SolidLine);
    CHECK(seriesOf<QLineSeries>(right).last()->pen().style() == Qt::CustomDashLine);
    for (auto* markers : seriesOf<QScatterSeries>(left)) {
        CHECK(markers->markerShape() == QScatterSeries::MarkerShapeCircle);
    }
    for (auto* markers : seriesOf<QScatterSeries>(right)) {
        CHECK(markers->markerShape() == QScatterSeries::MarkerShapeRectangle);
    }
}

TEST_CASE("composing again replaces what was drawn", "[charts]")
{
    QChart chart;
    composeChart(chart, picture(recovery::Side::left), ChartStyle{});
    const auto count = chart.series().size();
    composeChart(chart, picture(recovery::Side::left), ChartStyle{});

    CHECK(chart.series().size() == count);
    CHECK(chart.axes().size() == 2);
}

TEST_CASE("on paper a score stands at its own number on the axis", "[charts][paper]")
{
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(9);
    const auto style = paperStyle(font);
    CurvePicture tenOnDaySeven;
    tenOnDaySeven.side = recovery::Side::left;
    tenOnDaySeven.plainMarkers = {{7, 10}};
    tenOnDaySeven.runs = {{{7, 10}}};
    const QRectF area(0, 0, 340, 104);
    QImage page(340, 104, QImage::Format_RGB32);
    page.fill(Qt::white);
    QPainter painter(&page);
    paintChart(painter, area, 1, tenOnDaySeven, {}, style);
    painter.end();

    const auto plot = area.marginsRemoved(plotMargins(style));
    const QPointF place(plot.left() + plot.width() * acrossOf(7), plot.bottom() - plot.height() * upOf(10));
    CHECK(page.pixelColor(place.toPoint()).lightness() < 60);
    CHECK(page.pixelColor((place + QPointF(0, 14)).toPoint()).lightness() > 120);
}

TEST_CASE("on paper nothing but black and greys is used", "[charts][paper]")
{
    QImage page(400, 300, QImage::Format_RGB32);
    page.fill(Qt::white);
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(10);
    QPainter painter(&page);
    paintChart(painter, QRectF(0, 0, 400, 300), 1, picture(recovery::Side::right),
               {{2, QStringLiteral("called"), true}}, paperStyle(font));
    painter.end();

    bool drawn = false;
    for (int y = 0; y < page.height(); ++y) {
        for (int x = 0; x < page.width(); ++x) {
            const QColor pixel = page.pixelColor(x, y);
            REQUIRE(pixel.red() == pixel.green());
            REQUIRE(pixel.green() == pixel.blue());
            drawn = drawn || pixel.red() < 100;
        }
    }
    CHECK(drawn);
}
