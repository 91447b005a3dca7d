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
                listen();
                follow();
                m_unsettled = true;
            });
            // What was given the focus on a page that was just made has its place only after a frame.
            connect(window, &QQuickWindow::frameSwapped, this, [this] {
                if (std::exchange(m_unsettled, false)) {
                    follow();
                    m_told = false;
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

void FocusFollower::setAlert(QQuickItem* alert)
{
    if (alert == m_alert) {
        return;
    }
    if (m_alert) {
        m_alert->disconnect(this);
    }
    m_alert = alert;
    if (m_alert) {
        // Its place and its height are known after a frame.
        connect(m_alert, &QQuickItem::visibleChanged, this, [this] { m_told = m_unsettled = m_alert->isVisible(); });
    }
    Q_EMIT alertChanged();
}

void FocusFollower::listen()
{
    if (m_heard) {
        disconnect(m_heard, nullptr, this, SLOT(typed()));
    }
    m_heard = window() != nullptr ? window()->activeFocusItem() : nullptr;
    if (m_heard && m_heard->metaObject()->indexOfSignal("cursorRectangleChanged()") >= 0) {
        connect(m_heard, SIGNAL(cursorRectangleChanged()), this, SLOT(typed()));
    }
}

void FocusFollower::typed()
{
    // A new line gives its field more room only with the next frame.
    m_unsettled = true;
    follow();
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
    const double room = m_area->height() - 2 * m_margin;
    const auto whole = QRectF(0, 0, focused->width(), focused->height());
    const auto line = focused->property("cursorRectangle").toRectF();
    auto box = focused->mapRectToItem(content, focused->height() > room && line.isValid() ? line : whole);
    if (m_alert && m_alert->isVisible()) {
        const auto words = m_alert->mapRectToItem(content, QRectF(0, 0, m_alert->width(), m_alert->height()));
        if ((box | words).height() <= room) {
            box |= words;
        } else if (m_told) {
            box = words;
        }
    }
    const double top = box.top() - m_margin;
    const double bottom = box.bottom() + m_margin;
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
