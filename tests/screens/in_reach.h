#pragma once
/// \file
/// What of an item can be seen in its window, at once or after scrolling. Places are px of the window unless said otherwise.

#include <QQuickItem>
#include <QRectF>

namespace ebbline::screens {

/// What of the item is in sight, as far as what it stands in cuts it off.
QRectF inSight(const QQuickItem* item);

/// Whether nothing that it stands in cuts off any of the box.
bool insideClip(const QQuickItem* item, const QRectF& box);

/// In a strip that is moved to the side: one that cuts off what is beyond it, gives way to a hand, and itself lies within the window.
bool canScrollAside(const QQuickItem* item);

/// A Flickable between the item and the window that can bring this part of the item, in px of the item, into sight: it lies
/// within what is scrolled, and nothing within that cuts it off.
bool canScrollTo(const QQuickItem* item, const QRectF& part);

}  // namespace ebbline::screens
