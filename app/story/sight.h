#pragma once
/// \file
/// What of a page lies within its window, by the words that stand there: for pictures of what lies further down.

#include <QString>

class QQuickWindow;

namespace ebbline::story {

/// Whether these words stand on the page and within the window, all of them.
bool isInSight(const QQuickWindow* window, const QString& words);

/// Brings the words to the top of the page, as far as it can be moved. \returns whether they are in sight then.
bool scrollTo(QQuickWindow* window, const QString& words);

/// Back to where pages begin.
void scrollToTop(QQuickWindow* window);

}  // namespace ebbline::story
