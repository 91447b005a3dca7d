#include "tests/screens/in_reach.h"

#include <QQuickWindow>

#include <algorithm>

namespace ebbline::screens {

namespace {

bool movesAside(const QQuickItem* item)
{
    return item->inherits("QQuickFlickable") && item->property("contentWidth").toReal() > item->width();
}

/// Whether something between the item and `top` cuts off any of the box, which is the window's. A strip that is moved to the
/// side cuts nothing off there.
bool isCutBelow(const QQuickItem* item, const QQuickItem* top, const QRectF& box)
{
    for (auto* parent = item->parentItem(); parent != top; parent = parent->parentItem()) {
        if (!parent->clip()) {
            continue;
        }
        auto frame = parent->mapRectToScene(QRectF(0, 0, parent->width(), parent->height())).adjusted(-1, -1, 1, 1);
        if (movesAside(parent)) {
            frame.setLeft(std::min(frame.left(), box.left()));
            frame.setRight(std::max(frame.right(), box.right()));
        }
        if (!frame.contains(box)) {
            return true;
        }
    }
    return false;
}

}  // namespace

bool canScrollAside(const QQuickItem* item)
{
    const qreal room = item->window()->width();
    for (auto* parent = item->parentItem(); parent != nullptr; parent = parent->parentItem()) {
        if (!movesAside(parent)) {
            continue;
        }
        const auto frame = parent->mapRectToScene(QRectF(0, 0, parent->width(), parent->height()));
        if (parent->clip() && parent->property("interactive").toBool() && frame.left() >= -1 && frame.right() <= room + 1) {
            return true;
        }
    }
    return false;
}

bool canScrollTo(const QQuickItem* item, const QRectF& part)
{
    for (auto* parent = item->parentItem(); parent != nullptr; parent = parent->parentItem()) {
        const qreal high = parent->property("contentHeight").toReal();
        if (!parent->inherits("QQuickFlickable") || high <= parent->height()) {
            continue;
        }
        const auto place = item->mapRectToItem(parent->property("contentItem").value<QQuickItem*>(), part);
        const qreal top = parent->property("originY").toReal() - parent->property("topMargin").toReal();
        const qreal bottom = parent->property("originY").toReal() + high + parent->property("bottomMargin").toReal();
        if (place.top() >= top - 1 && place.bottom() <= bottom + 1 && !isCutBelow(item, parent, item->mapRectToScene(part))) {
            return true;
        }
    }
    return false;
}

bool insideClip(const QQuickItem* item, const QRectF& box)
{
    for (auto* parent = item->parentItem(); parent != nullptr; parent = parent->parentItem()) {
        if (parent->clip()) {
            const auto frame = parent->mapRectToScene(QRectF(0, 0, parent->width(), parent->height())).adjusted(-1, -1, 1, 1);
            if (!frame.contains(box)) {
                return false;
            }
        }
    }
    return true;
}

QRectF inSight(const QQuickItem* item)
{
    auto box = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
    for (auto* parent = item->parentItem(); parent != nullptr; parent = parent->parentItem()) {
        if (parent->clip()) {
            box &= parent->mapRectToScene(QRectF(0, 0, parent->width(), parent->height()));
        }
    }
    return box;
}

}  // namespace ebbline::screens
