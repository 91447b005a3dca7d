#include "app/story/sight.h"

#include <QQuickItem>
#include <QQuickWindow>

#include <algorithm>
#include <functional>

namespace ebbline::story {

namespace {

constexpr double above = 16;  // px left free over what is scrolled to

bool isScrolling(const QQuickItem* item)
{
    return item->inherits("QQuickFlickable");
}

/// The first item on show, in the order of the page, for which `is` holds.
QQuickItem* shown(QQuickItem* root, const std::function<bool(const QQuickItem*)>& is)
{
    if (root == nullptr || !root->isVisible())
        return nullptr;
    if (is(root))
        return root;
    for (QQuickItem* child : root->childItems())
        if (QQuickItem* found = shown(child, is))
            return found;
    return nullptr;
}

QQuickItem* wordsOn(const QQuickWindow* window, const QString& words)
{
    // What stands empty is as high as a line.
    return window == nullptr || words.isEmpty() ? nullptr : shown(window->contentItem(), [&](const QQuickItem* item) {
        return item->inherits("QQuickText") && item->height() > 0 && item->property("text").toString() == words;
    });
}

void moveTo(QQuickItem* page, double y)
{
    const double most = std::max(0.0, page->property("contentHeight").toDouble() - page->height());
    page->setProperty("contentY", std::clamp(y, 0.0, most));
}

}  // namespace

bool isInSight(const QQuickWindow* window, const QString& words)
{
    const QQuickItem* item = wordsOn(window, words);
    if (item == nullptr)
        return false;
    const QRectF place = item->mapRectToScene(item->boundingRect());
    for (const QQuickItem* parent = item->parentItem(); parent != nullptr; parent = parent->parentItem())
        if (parent->clip() && !parent->mapRectToScene(parent->boundingRect()).contains(place))
            return false;
    return window->contentItem()->boundingRect().contains(place);
}

bool scrollTo(QQuickWindow* window, const QString& words)
{
    QQuickItem* item = wordsOn(window, words);
    for (QQuickItem* parent = item == nullptr ? nullptr : item->parentItem(); parent != nullptr; parent = parent->parentItem())
        if (isScrolling(parent))
            moveTo(parent, item->mapToItem(parent->property("contentItem").value<QQuickItem*>(), QPointF(0, 0)).y() - above);
    return isInSight(window, words);
}

void scrollToTop(QQuickWindow* window)
{
    if (QQuickItem* page = window == nullptr ? nullptr : shown(window->contentItem(), isScrolling))
        moveTo(page, 0);
}

}  // namespace ebbline::story
