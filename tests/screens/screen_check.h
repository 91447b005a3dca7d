#pragma once
/// \file
/// What every page of a program must keep, checked on the living page: names for screen readers,
/// targets that can be hit, and words that are not cut off or hidden behind an edge.

#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>

namespace ebbline::screens {

/// Everything below the window's content that can be seen now, parents first.
QList<QQuickItem*> visibleItems(QQuickWindow& window);

/// Controls and figures without an accessible name. Empty is right.
QStringList withoutName(QQuickWindow& window);

/// Things to press that are smaller than `least` in either direction.
QStringList smallTargets(QQuickWindow& window, qreal least);

/// Texts whose painted words are wider or higher than their item, or that stick out of the window
/// to a side, or out of a clipping parent that cannot scroll to them.
QStringList cutOff(QQuickWindow& window);

/// Lets layouts, loaders and queued work come to rest.
void settle(QQuickWindow& window);

}  // namespace ebbline::screens
