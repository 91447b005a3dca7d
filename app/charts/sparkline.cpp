#include "app/charts/sparkline.h"

#include <QPainter>

namespace ebbline::charts {

Sparkline::Sparkline(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &Sparkline::changed, this, [this] { update(); });
}

void Sparkline::setLeftCurve(const CurvePicture& picture)
{
    if (picture != m_left) {
        m_left = picture;
        Q_EMIT changed();
    }
}

void Sparkline::setRightCurve(const CurvePicture& picture)
{
    if (picture != m_right) {
        m_right = picture;
        Q_EMIT changed();
    }
}

QPointF Sparkline::place(const QPointF& point) const
{
    constexpr double edge = 2.5;
    return {edge + (width() - 2 * edge) * acrossOf(point.x()),
            height() - edge - (height() - 2 * edge) * upOf(point.y())};
}

void Sparkline::paintRuns(QPainter& painter, const CurvePicture& picture, const QColor& colour) const
{
    QPen pen(colour, 1.5);
    pen.setCapStyle(Qt::RoundCap);
    pen.setJoinStyle(Qt::RoundJoin);
    if (!picture.isLeft()) {
        pen.setDashPattern({2.5, 2});
        pen.setCapStyle(Qt::FlatCap);
    }
    for (const auto& run : picture.runs) {
        QPolygonF line;
        for (const auto& point : run) {
            line << place(point);
        }
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        painter.drawPolyline(line);
        if (run.size() == 1) {
            painter.setPen(QPen(colour, 3.5, Qt::SolidLine, Qt::RoundCap));
            painter.drawPoint(line.first());
        }
    }
}

void Sparkline::paint(QPainter* painter)
{
    if (width() <= 0 || height() <= 0) {
        return;
    }
    const auto& band = m_left.low.isEmpty() ? m_right : m_left;
    QPolygonF ground;
    for (const auto& point : band.high) {
        ground << place(point);
    }
    for (auto point = band.low.crbegin(); point != band.low.crend(); ++point) {
        ground << place(*point);
    }
    painter->setPen(Qt::NoPen);
    painter->setBrush(m_sand);
    painter->drawPolygon(ground);
    painter->setPen(QPen(m_line, 1));
    painter->drawLine(place({axisStart, 0}), place({axisEnd, 0}));
    paintRuns(*painter, m_left, m_leftColor);
    paintRuns(*painter, m_right, m_rightColor);
}

}  // namespace ebbline::charts
