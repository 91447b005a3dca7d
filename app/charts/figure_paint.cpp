#include "app/charts/figure_paint.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ebbline::charts {

namespace {

constexpr double gap = 12;
constexpr double narrowEms = 34;    // below: labels stand over their rows
constexpr double lineAspect = 0.42;  // height of curves by width

double em(const QFont& font)
{
    return QFontMetricsF(font).height();
}

double wrappedHeight(const QString& text, double width, const QFont& font)
{
    return QFontMetricsF(font).boundingRect(QRectF(0, 0, width, 1e6), Qt::TextWordWrap, text).height();
}

/// Where the parts of a figure of rows lie.
struct RowGrid {
    bool stacked;       // label above, words below the plot
    double labelWidth;
    double plotLeft;
    double plotWidth;
    double textLeft;
    double textWidth;
};

RowGrid gridOf(const FigurePicture& picture, double width, const QFont& font)
{
    const QFontMetricsF metrics(font);
    RowGrid grid{};
    grid.stacked = width < narrowEms * font.pixelSize();
    if (grid.stacked) {
        grid.labelWidth = grid.textWidth = width;
        grid.plotLeft = grid.textLeft = 0;
        grid.plotWidth = width;
        return grid;
    }
    for (const auto& row : picture.rows) {
        grid.labelWidth = std::max(grid.labelWidth, metrics.horizontalAdvance(row.label) + 2);
        grid.textWidth = std::max(grid.textWidth, metrics.horizontalAdvance(row.text) + 2);
    }
    grid.labelWidth = std::min(grid.labelWidth, 0.30 * width);
    grid.textWidth = std::min(grid.textWidth, 0.34 * width);
    grid.plotLeft = grid.labelWidth + 2 * gap;
    grid.textLeft = width - grid.textWidth;
    grid.plotWidth = std::max(1.0, grid.textLeft - 2 * gap - grid.plotLeft);
    return grid;
}

double rowHeight(const RangeRow& row, const RowGrid& grid, const QFont& font)
{
    const double label = wrappedHeight(row.label, grid.labelWidth, font);
    const double text = wrappedHeight(row.text, grid.textWidth, font);
    return grid.stacked ? label + text + (row.known ? gap : 0) + gap : std::max({label, text, em(font)}) + 0.6 * gap;
}

void drawTicks(QPainter& painter, const FigurePicture& picture, const ChartStyle& style, const QRectF& plot)
{
    const QFontMetricsF metrics(style.font);
    auto grid = style.line;
    grid.setAlphaF(0.35f);
    for (const auto& tick : picture.xTicks) {
        const double x = plot.left() + plot.width() * (tick.at - picture.xLow) / (picture.xHigh - picture.xLow);
        painter.setPen(QPen(grid, 1));
        painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom() + 4));
        painter.setPen(style.inkSoft);
        const double half = metrics.horizontalAdvance(tick.text) / 2;
        painter.drawText(QPointF(x - half, plot.bottom() + 6 + metrics.ascent()), tick.text);
    }
    painter.setPen(style.inkSoft);
    painter.drawText(QRectF(plot.left(), plot.bottom() + 6 + metrics.height(), plot.width(), metrics.height() * 2),
                     Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, picture.xTitle);
}

void paintRows(QPainter& painter, const QRectF& area, const FigurePicture& picture, const ChartStyle& style)
{
    const auto grid = gridOf(picture, area.width(), style.font);
    double rows = 0;
    for (const auto& row : picture.rows) {
        rows += rowHeight(row, grid, style.font);
    }
    const QRectF plot(area.left() + grid.plotLeft, area.top(), grid.plotWidth, rows);
    if (!grid.stacked) {
        drawTicks(painter, picture, style, plot);
    } else {
        drawTicks(painter, picture, style, {plot.left() + gap, plot.bottom(), plot.width() - 2 * gap, 0});
    }
    const double inset = grid.stacked ? gap : 0;
    const auto across = [&](double value) {
        const double part = std::clamp((value - picture.xLow) / (picture.xHigh - picture.xLow), 0.0, 1.0);
        return plot.left() + inset + (plot.width() - 2 * inset) * part;
    };
    if (picture.reference) {
        painter.setPen(QPen(style.ink, 1.2, Qt::DotLine));
        painter.drawLine(QPointF(across(*picture.reference), plot.top()), QPointF(across(*picture.reference), plot.bottom()));
    }
    double y = area.top();
    for (const auto& row : picture.rows) {
        const double height = rowHeight(row, grid, style.font);
        const double label = wrappedHeight(row.label, grid.labelWidth, style.font);
        painter.setPen(style.ink);
        const auto labelAt = grid.stacked ? QRectF(area.left(), y, grid.labelWidth, label) : QRectF(area.left(), y, grid.labelWidth, height);
        painter.drawText(labelAt, static_cast<int>(Qt::AlignVCenter) | static_cast<int>(Qt::AlignLeft) | Qt::TextWordWrap, row.label);
        painter.setPen(row.known ? style.ink : style.inkSoft);
        const double below = y + label + (row.known ? gap : 0);
        const auto textAt = grid.stacked ? QRectF(area.left(), below, grid.textWidth, height - (below - y))
                                         : QRectF(area.left() + grid.textLeft, y, grid.textWidth, height);
        painter.drawText(textAt, static_cast<int>(grid.stacked ? Qt::AlignTop : Qt::AlignVCenter) | static_cast<int>(Qt::AlignLeft) | Qt::TextWordWrap, row.text);
        if (row.known) {
            const double middle = grid.stacked ? y + label + gap / 2 : y + height / 2;
            painter.setPen(QPen(style.left, 2));
            painter.drawLine(QPointF(across(row.low), middle), QPointF(across(row.high), middle));
            for (const double end : {row.low, row.high}) {
                painter.drawLine(QPointF(across(end), middle - 4), QPointF(across(end), middle + 4));
            }
            painter.setBrush(style.left);
            painter.setPen(Qt::NoPen);
            painter.drawEllipse(QPointF(across(row.value), middle), 5, 5);
            painter.setBrush(Qt::NoBrush);
        }
        y += height;
    }
}

QRectF linePlot(const QRectF& area, const FigurePicture& picture, const ChartStyle& style)
{
    const QFontMetricsF metrics(style.font);
    double labels = 0;
    for (const auto& tick : picture.yTicks) {
        labels = std::max(labels, metrics.horizontalAdvance(tick.text));
    }
    const double foot = 8 + 3 * metrics.height() + (picture.ticksBelow.isEmpty() ? 0 : metrics.height() + gap);
    const double head = metrics.height() + 6;
    return {area.left() + labels + 10, area.top() + head, area.width() - labels - 10 - gap, area.height() - head - foot};
}

void strokeLine(QPainter& painter, const FigureLine& line, const ChartStyle& style, const auto& place)
{
    QPen pen(line.soft ? style.inkSoft : style.left, line.soft ? 1.4 : 2.2);
    pen.setJoinStyle(Qt::MiterJoin);
    if (line.stroke == FigureLine::Stroke::dashed) {
        pen.setDashPattern({5, 3});
    } else if (line.stroke == FigureLine::Stroke::dotted) {
        pen.setDashPattern({1, 2.5});
    }
    QPolygonF path;
    for (const auto& point : line.points) {
        if (line.stepped && !path.isEmpty()) {
            path << QPointF(place(point).x(), path.last().y());
        }
        path << place(point);
    }
    painter.setPen(pen);
    painter.drawPolyline(path);
}

void paintLines(QPainter& painter, const QRectF& area, const FigurePicture& picture, const ChartStyle& style)
{
    const QFontMetricsF metrics(style.font);
    const QRectF plot = linePlot(area, picture, style);
    const double extra = picture.ticksBelow.isEmpty() ? 0 : metrics.height() + gap;
    const auto place = [&](const QPointF& point) {
        const double x = std::clamp((point.x() - picture.xLow) / (picture.xHigh - picture.xLow), 0.0, 1.0);
        const double y = std::clamp((point.y() - picture.yLow) / (picture.yHigh - picture.yLow), 0.0, 1.0);
        return QPointF(plot.left() + plot.width() * x, plot.bottom() - plot.height() * y);
    };
    drawTicks(painter, picture, style, plot);
    auto grid = style.line;
    grid.setAlphaF(0.35f);
    for (const auto& tick : picture.yTicks) {
        const double y = place({picture.xLow, tick.at}).y();
        painter.setPen(QPen(grid, 1));
        painter.drawLine(QPointF(plot.left() - 4, y), QPointF(plot.right(), y));
        painter.setPen(style.inkSoft);
        painter.drawText(QPointF(plot.left() - 8 - metrics.horizontalAdvance(tick.text), y + metrics.ascent() / 2 - 1), tick.text);
    }
    painter.setPen(style.inkSoft);
    painter.drawText(QRectF(area.left(), area.top(), area.width(), metrics.height()), Qt::AlignLeft, picture.yTitle);
    painter.setPen(QPen(style.line, 1));
    painter.drawLine(plot.bottomLeft(), plot.bottomRight());
    if (picture.limit) {
        const double y = place({picture.xLow, *picture.limit}).y();
        painter.setPen(QPen(style.ink, 1.4, Qt::DashLine));
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
        painter.setPen(style.ink);
        painter.drawText(QPointF(plot.left() + 6, y - 5), picture.limitText);
    }
    for (const auto& line : picture.lines) {
        strokeLine(painter, line, style, place);
    }
    double labelled = -1e9;
    for (const auto& line : picture.lines) {
        if (!line.label.isEmpty() && !line.points.isEmpty()) {
            const auto end = place(line.points.last());
            const double y = std::max(end.y() - 6, labelled + metrics.height());
            painter.setPen(line.soft ? style.inkSoft : style.ink);
            painter.drawText(QPointF(std::max(plot.left(), end.x() - metrics.horizontalAdvance(line.label) - 4), y), line.label);
            labelled = y;
        }
    }
    for (const auto& mark : picture.signalMarks) {
        const auto at = place(mark);
        painter.setPen(QPen(style.ink, 1.6));
        painter.setBrush(style.paper);
        painter.drawPolygon(QPolygonF({at + QPointF(0, -8), at + QPointF(8, 6), at + QPointF(-8, 6)}));
        painter.setBrush(Qt::NoBrush);
    }
    if (!picture.ticksBelow.isEmpty()) {
        const double top = plot.bottom() + 8 + 2.4 * metrics.height();
        painter.setPen(QPen(style.ink, 1.4));
        for (const double at : picture.ticksBelow) {
            const double x = place({at, picture.yLow}).x();
            painter.drawLine(QPointF(x, plot.bottom() - 7), QPointF(x, plot.bottom()));
        }
        painter.setPen(style.inkSoft);
        painter.drawText(QRectF(plot.left(), top, plot.width(), extra), Qt::AlignHCenter, picture.belowText);
    }
}

}  // namespace

double figureHeight(const FigurePicture& picture, double width, const QFont& font)
{
    if (picture.isEmpty() || width <= 0) {
        return 0;
    }
    const double foot = 8 + 3 * em(font);
    if (picture.rows.isEmpty()) {
        return std::clamp(width * lineAspect, 200.0, 420.0) + foot + (picture.ticksBelow.isEmpty() ? 0 : em(font) + gap);
    }
    const auto grid = gridOf(picture, width, font);
    double height = foot;
    for (const auto& row : picture.rows) {
        height += rowHeight(row, grid, font);
    }
    return std::ceil(height);
}

void paintFigure(QPainter& painter, const QRectF& area, const FigurePicture& picture, const ChartStyle& style)
{
    if (picture.isEmpty()) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setLayoutDirection(Qt::LeftToRight);
    painter.setFont(style.font);
    if (picture.rows.isEmpty()) {
        paintLines(painter, area, picture, style);
    } else {
        paintRows(painter, area, picture, style);
    }
    painter.restore();
}

}  // namespace ebbline::charts
