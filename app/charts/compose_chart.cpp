#include "app/charts/compose_chart.h"

#include "app/charts/axis_labels.h"
#include "app/charts/curve_words.h"
#include "app/charts/event_line.h"

#include <QAreaSeries>
#include <QCategoryAxis>
#include <QChart>
#include <QFontMetricsF>
#include <QGraphicsLayout>
#include <QGraphicsScene>
#include <QLineSeries>
#include <QPainter>
#include <QScatterSeries>

#include <algorithm>
#include <array>
#include <memory>

namespace ebbline::charts {

namespace {

/// An axis with a line of the grid at each tick; its numbers are AxisLabels'.
template <typename Ticks>
QCategoryAxis* axisOf(double low, double high, const Ticks& ticks, const ChartStyle& style)
{
    auto axis = std::make_unique<QCategoryAxis>();
    axis->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    axis->setStartValue(low - 1);
    for (const int tick : ticks) {
        axis->append(QString::number(tick), tick);
    }
    axis->setRange(low, high);
    axis->setLabelsVisible(false);
    axis->setLinePen(QPen(style.line, 1));
    auto grid = style.line;
    grid.setAlphaF(0.35f);
    axis->setGridLinePen(QPen(grid, 1));
    return axis.release();
}

template <typename Series>
Series* added(QChart& chart, const QList<QPointF>& points)
{
    auto series = std::make_unique<Series>();
    series->replace(points);
    auto* kept = series.get();
    chart.addSeries(series.release());
    for (auto* axis : chart.axes()) {
        kept->attachAxis(axis);
    }
    return kept;
}

void addBand(QChart& chart, const CurvePicture& picture, const ChartStyle& style)
{
    if (picture.low.isEmpty()) {
        return;
    }
    auto* low = new QLineSeries(&chart);
    auto* high = new QLineSeries(&chart);
    low->replace(picture.low);
    high->replace(picture.high);
    auto* area = new QAreaSeries(high, low);
    area->setBrush(style.sand);
    area->setPen(QPen(style.bandEdge, 1));
    chart.addSeries(area);
    for (auto* axis : chart.axes()) {
        area->attachAxis(axis);
    }
    QPen dotted(style.bandEdge, 1.2);
    dotted.setDashPattern({1, 3});
    dotted.setCapStyle(Qt::RoundCap);
    added<QLineSeries>(chart, picture.median)->setPen(dotted);
}

void addOutlook(QChart& chart, const CurvePicture& picture, const ChartStyle& style)
{
    if (!picture.outlook) {
        return;
    }
    const auto& outlook = *picture.outlook;
    const double x = std::min(outlook.day, static_cast<double>(lastDay)) + 0.6;
    const QPen pen(style.inkSoft, 1.4);
    added<QLineSeries>(chart, {{x, outlook.low}, {x, outlook.high}})->setPen(pen);
    for (const double y : {outlook.low, outlook.median, outlook.high}) {
        added<QLineSeries>(chart, {{x - 0.25, y}, {x + 0.25, y}})->setPen(pen);
    }
}

void addMarkers(QChart& chart, const QList<QPointF>& points, bool hollow, bool left, const ChartStyle& style)
{
    if (points.isEmpty()) {
        return;
    }
    const auto colour = left ? style.left : style.right;
    auto* markers = added<QScatterSeries>(chart, points);
    markers->setMarkerShape(left ? QScatterSeries::MarkerShapeCircle : QScatterSeries::MarkerShapeRectangle);
    markers->setMarkerSize(left ? style.markerSize : style.markerSize - 1);
    markers->setColor(hollow ? style.paper : colour);
    markers->setBorderColor(colour);
    markers->setPen(QPen(colour, hollow ? 1.8 : 1));
}

}  // namespace

ChartStyle paperStyle(const QFont& font)
{
    ChartStyle style;
    style.ink = Qt::black;
    style.inkSoft = QColor(0x33, 0x33, 0x33);
    style.line = QColor(0x66, 0x66, 0x66);
    style.sand = QColor(0xe6, 0xe6, 0xe6);
    style.bandEdge = QColor(0x70, 0x70, 0x70);
    style.left = Qt::black;
    style.right = Qt::black;
    style.font = font;
    style.curveWidth = 1.6;
    style.markerSize = 7;
    return style;
}

QMarginsF plotMargins(const ChartStyle& style)
{
    const QFontMetricsF metrics(style.font);
    constexpr double tick = 8;
    return {metrics.horizontalAdvance(digits(highestScore)) + 2 * tick, metrics.height() / 2 + 1,
            metrics.horizontalAdvance(digits(lastDay)) / 2 + 3, metrics.height() + tick};
}

void composeChart(QChart& chart, const CurvePicture& picture, const ChartStyle& style)
{
    chart.removeAllSeries();
    for (auto* axis : chart.axes()) {
        chart.removeAxis(axis);
        delete axis;
    }
    chart.setAnimationOptions(QChart::NoAnimation);
    chart.setBackgroundVisible(false);
    chart.setPlotAreaBackgroundVisible(false);
    chart.setContentsMargins(0, 0, 0, 0);
    if (auto* layout = chart.layout()) {
        layout->setContentsMargins(0, 0, 0, 0);
    }
    chart.legend()->hide();
    chart.setLayoutDirection(Qt::LeftToRight);  // time runs left to right in every language

    constexpr std::array scoreTicks{0, 2, 4, 6, 8, 10};
    chart.addAxis(axisOf(axisStart, axisEnd, dayTicks, style), Qt::AlignBottom);
    chart.addAxis(axisOf(scoreFloor, scoreCeiling, scoreTicks, style), Qt::AlignLeft);
    const auto items = chart.childItems();
    for (auto* item : items) {
        if (item->type() == AxisLabels::Type) {
            delete item;
        }
    }
    new AxisLabels(chart, style);  // belongs to the chart

    addBand(chart, picture, style);
    const bool left = picture.isLeft();
    QPen pen(left ? style.left : style.right, style.curveWidth);
    if (!left) {
        pen.setDashPattern({4, 2.5});
        pen.setCapStyle(Qt::FlatCap);
    }
    for (const auto& run : picture.runs) {
        added<QLineSeries>(chart, run)->setPen(pen);
    }
    addOutlook(chart, picture, style);
    addMarkers(chart, picture.plainMarkers, false, left, style);
    addMarkers(chart, picture.hollowMarkers, true, left, style);
}

void paintChart(QPainter& painter, const QRectF& area, double unitsPerPixel, const CurvePicture& picture,
                const QList<Event>& events, const ChartStyle& style)
{
    const QSizeF size = area.size() / unitsPerPixel;
    QGraphicsScene scene;
    auto* chart = new QChart();
    scene.addItem(chart);
    composeChart(*chart, picture, style);
    const double eventSpace = events.isEmpty() ? 0 : eventLineHeight(events, 0, size.width() * 0.9, style.font) + 6;
    chart->resize(size.width(), size.height() - eventSpace);
    chart->setPlotArea(chart->rect().marginsRemoved(plotMargins(style)));
    // The library lays a fixed plot out only with its next layout, which the event loop would bring.
    chart->layout()->invalidate();
    chart->layout()->activate();
    scene.setSceneRect(QRectF(QPointF(), size));
    scene.render(&painter, area, scene.sceneRect());

    if (!events.isEmpty()) {
        const auto plot = chart->plotArea();
        painter.save();
        painter.translate(area.left(), area.top());
        painter.scale(unitsPerPixel, unitsPerPixel);
        painter.translate(0, size.height() - eventSpace + 4);
        paintEvents(painter, events, plot.left(), plot.width(), style);
        painter.restore();
    }
}

}  // namespace ebbline::charts
