#include "app/charts/event_line.h"

#include "app/charts/curve_words.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <array>

namespace ebbline::charts {

namespace {

constexpr double tickLength = 7;
constexpr double gap = 6;

double rowHeightOf(const QFont& font)
{
    return QFontMetricsF(font).height() + 2;
}

}  // namespace

QList<EventPlace> placeEvents(const QList<Event>& events, double left, double width, double rowHeight,
                              const QFont& font)
{
    const QFontMetricsF metrics(font);
    std::array<QList<QRectF>, eventRows> taken;
    QList<EventPlace> places;
    QList<int> order;
    for (int i = 0; i < events.size(); ++i) {
        order.append(i);
    }
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) {
        return std::pair(events[a].quiet, events[a].day) < std::pair(events[b].quiet, events[b].day);
    });
    for (const int i : order) {
        const double day = std::clamp(events[i].day, double(firstDay), axisEnd);
        EventPlace place{left + width * acrossOf(day), {}, i};
        const double text = metrics.horizontalAdvance(events[i].label);
        const double start = std::min(place.tick + 3, left + width - text);
        // What is quiet stays in the first row, and out of the way of ticks that run to a lower one.
        const int rows = events[i].quiet ? 1 : eventRows;
        for (int row = 0; row < rows; ++row) {
            const QRectF box(start, tickLength + row * rowHeight, text, rowHeight);
            auto& others = taken[static_cast<std::size_t>(row)];
            const bool free = std::none_of(others.begin(), others.end(), [&](const QRectF& other) { return other.adjusted(-gap, 0, gap, 0).intersects(box); });
            const bool crossed = events[i].quiet && std::any_of(places.begin(), places.end(), [&](const EventPlace& other) {
                return other.box.top() > box.top() && other.tick > box.left() && other.tick < box.right();
            });
            if (free && !crossed) {
                place.box = box;
                others.append(box);
                break;
            }
        }
        places.append(place);
    }
    return places;
}

double eventLineHeight(const QList<Event>& events, double left, double width, const QFont& font)
{
    double bottom = tickLength;
    for (const auto& place : placeEvents(events, left, width, rowHeightOf(font), font)) {
        bottom = std::max(bottom, place.box.bottom());
    }
    return bottom;
}

void paintEvents(QPainter& painter, const QList<Event>& events, double left, double width,
                 const ChartStyle& style)
{
    painter.save();
    painter.setFont(style.font);
    painter.setPen(QPen(style.line, 1));
    painter.drawLine(QPointF(left, 0.5), QPointF(left + width, 0.5));
    for (const auto& place : placeEvents(events, left, width, rowHeightOf(style.font), style.font)) {
        const auto& event = events[place.event];
        painter.setPen(QPen(event.urgent ? style.ink : style.inkSoft, event.urgent ? 3 : 1.4));
        const double foot = place.box.isEmpty() ? tickLength : place.box.bottom() - 2;
        painter.drawLine(QPointF(place.tick, 0), QPointF(place.tick, foot));
        if (!place.box.isEmpty()) {
            painter.setPen(event.urgent ? style.ink : style.inkSoft);
            painter.drawText(place.box, Qt::AlignLeft | Qt::AlignVCenter | Qt::AlignAbsolute, event.label);
        }
    }
    painter.restore();
}

}  // namespace ebbline::charts
