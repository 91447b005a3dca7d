#include "tests/screens/first_page.h"

#include "tests/screens/in_reach.h"

namespace ebbline::screens {

void toTheTop(QQuickWindow& window)
{
    for (auto* item : visibleItems(window))
        if (item->inherits("QQuickFlickable"))
            item->setProperty("contentY", item->property("originY"));
    settle(window);
}

QStringList placesIn(QQuickWindow& window)
{
    QStringList places;
    for (const auto* item : visibleItems(window)) {
        const bool words = item->inherits("QQuickText") && !item->property("text").toString().isEmpty();
        if ((!words && !item->inherits("QQuickAbstractButton")) || inSight(item).isEmpty())
            continue;
        const auto at = item->mapToScene({}).toPoint();
        places << QStringLiteral("%1 at %2, %3, %4 x %5").arg(nameOf(item)).arg(at.x()).arg(at.y()).arg(qRound(item->width())).arg(qRound(item->height()));
    }
    return places;
}

}  // namespace ebbline::screens
