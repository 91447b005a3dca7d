#include "app/controls/focus_follower.h"

#include <QQuickWindow>

#include <algorithm>
#include <utility>

namespace ebbline::controls {

FocusFollower::FocusFollower(QQuickItem* parent) : QQuickItem(parent)
{
    connect(this, &QQuickItem::windowChanged, this, [this](QQuickWindow* window) {
        if (window != nullptr) {
            connect(window, &QQuickWindow::activeFocusItemChanged, this, [this] {
                follow();
                m_unsettled = true;
            });
            // What was given the focus on a page that was just made has its place only after a frame.
            connect(window, &QQuickWindow::frameSwapped, this, [this] {
                if (std::exchange(m_unsettled, false)) {
                    follow();
                }
            });
        }
    });
}

void FocusFollower::setArea(QQuickItem* area)
{
    if (area == m_area) {
        return;
    }
    if (m_area) {
        m_area->disconnect(this);
    }
    m_area = area;
    if (m_area) {
        connect(m_area, &QQuickItem::heightChanged, this, &FocusFollower::follow);
    }
    Q_EMIT areaChanged();
}

void FocusFollower::follow()
{
    auto* focused = window() != nullptr ? window()->activeFocusItem() : nullptr;
    if (!m_area || focused == nullptr) {
        return;
    }
    auto* content = m_area->property("contentItem").value<QQuickItem*>();
    if (content == nullptr || !content->isAncestorOf(focused)) {
        return;
    }
    const double top = focused->mapToItem(content, QPointF(0, 0)).y() - m_margin;
    const double bottom = top + focused->height() + 2 * m_margin;
    const double now = m_area->property("contentY").toDouble();
    const double furthest = std::max(0.0, m_area->property("contentHeight").toDouble() - m_area->height());
    double next = now;
    if (bottom > now + m_area->height()) {
        next = bottom - m_area->height();
    }
    if (top < next) {
        next = top;
    }
    if (next != now) {
        m_area->setProperty("contentY", std::clamp(next, 0.0, furthest));
    }
}

}  // namespace ebbline::controls
