#include "app/charts/event_strip.h"

#include <cmath>

namespace ebbline::charts {

EventStrip::EventStrip(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &EventStrip::changed, this, [this] {
        setImplicitHeight(std::ceil(eventLineHeight(m_events, m_plotLeft, m_plotWidth, m_font)));
        update();
    });
}

void EventStrip::setEvents(const QList<Event>& events)
{
    if (events != m_events) {
        m_events = events;
        Q_EMIT changed();
    }
}

void EventStrip::paint(QPainter* painter)
{
    ChartStyle style;
    style.ink = m_ink;
    style.inkSoft = m_inkSoft;
    style.line = m_line;
    style.font = m_font;
    paintEvents(*painter, m_events, m_plotLeft, m_plotWidth, style);
}

}  // namespace ebbline::charts
