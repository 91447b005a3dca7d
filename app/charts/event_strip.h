#pragma once
/// \file
/// The line of events as an item, to stand under a chart and share its plot's left and width.

#include "app/charts/event_line.h"

#include <QQuickPaintedItem>

namespace ebbline::charts {

class EventStrip : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QList<ebbline::charts::Event> events READ events WRITE setEvents NOTIFY changed FINAL)
    Q_PROPERTY(qreal plotLeft MEMBER m_plotLeft NOTIFY changed FINAL)
    Q_PROPERTY(qreal plotWidth MEMBER m_plotWidth NOTIFY changed FINAL)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY changed FINAL)
    Q_PROPERTY(QColor inkSoft MEMBER m_inkSoft NOTIFY changed FINAL)
    Q_PROPERTY(QColor line MEMBER m_line NOTIFY changed FINAL)
    Q_PROPERTY(QFont font MEMBER m_font NOTIFY changed FINAL)

public:
    explicit EventStrip(QQuickItem* parent = nullptr);

    QList<Event> events() const { return m_events; }
    void setEvents(const QList<Event>& events);
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

private:
    QList<Event> m_events;
    qreal m_plotLeft = 0;
    qreal m_plotWidth = 100;
    QColor m_ink{Qt::black};
    QColor m_inkSoft{Qt::darkGray};
    QColor m_line{Qt::gray};
    QFont m_font;
};

}  // namespace ebbline::charts
