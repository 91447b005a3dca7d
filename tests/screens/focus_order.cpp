// The order in which the keyboard goes through a page, against the one in which it is read.
#include "tests/screens/screen_check.h"

namespace ebbline::screens {

namespace {

bool isGauge(const QQuickItem* item)
{
    return QByteArray(item->metaObject()->className()).startsWith("SideGauge_");
}

/// What is read as one, from the outermost to the item: what scrolls, and gauges.
QList<const QQuickItem*> blocksOf(const QQuickItem* item)
{
    QList<const QQuickItem*> blocks{item};
    for (const auto* parent = item->parentItem(); parent != nullptr; parent = parent->parentItem()) {
        if (parent->inherits("QQuickFlickable") || isGauge(parent)) {
            blocks.prepend(parent);
        }
    }
    return blocks;
}

bool isReadBefore(const QQuickItem* one, const QQuickItem* other, bool mirrored)
{
    const auto first = one->mapRectToScene(QRectF(0, 0, one->width(), one->height()));
    const auto second = other->mapRectToScene(QRectF(0, 0, other->width(), other->height()));
    const qreal common = std::min(first.bottom(), second.bottom()) - std::max(first.top(), second.top());
    if (common < std::min(first.height(), second.height()) / 2) {
        return first.top() <= second.top();
    }
    return mirrored ? first.right() >= second.right() - 1 : first.left() <= second.left() + 1;
}

}  // namespace

QStringList outOfOrder(QQuickWindow& window)
{
    constexpr int most = 500;
    QList<QQuickItem*> order;
    auto* item = window.contentItem();
    for (int i = 0; i < most; ++i) {
        item = item->nextItemInFocusChain(true);
        if (item == nullptr || order.contains(item)) {
            break;
        }
        if (pressable(item) && item->isVisible() && item->isEnabled()) {
            order << item;
        }
    }
    QStringList faults;
    for (qsizetype i = 1; i < order.size(); ++i) {
        const auto first = blocksOf(order[i - 1]);
        const auto second = blocksOf(order[i]);
        qsizetype shared = 0;
        while (first[shared] == second[shared]) {
            ++shared;
        }
        const bool insideGauge = shared > 0 && isGauge(first[shared - 1]);
        // The sides stand as on the picture, whatever the direction of the words.
        const bool mirrored = order[i]->property("mirrored").toBool() && !(isGauge(first[shared]) && isGauge(second[shared]));
        if (!insideGauge && !isReadBefore(first[shared], second[shared], mirrored)) {
            faults << nameOf(order[i - 1]) + QStringLiteral(" comes before ") + nameOf(order[i]);
        }
    }
    return faults;
}

}  // namespace ebbline::screens
