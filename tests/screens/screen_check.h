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

/// What a complaint calls it: its type and the beginning of its words.
QString nameOf(const QQuickItem* item);

/// A button, a field, or a list that opens.
bool pressable(const QQuickItem* item);

/// That the page is there, in the Loader called "page" where the window has one: it loads, its title can be read, and at least
/// one control of its own can be used, in sight or where scrolling brings it. Without `title` the page's property of that name;
/// one that has none, or folds it away for want of room, has a heading. Empty is right.
QStringList emptyPage(QQuickWindow& window, const QString& title = {});

/// Controls and figures without an accessible name. Empty is right.
QStringList withoutName(QQuickWindow& window);

/// Things to press that are smaller than `least` in either direction.
QStringList smallTargets(QQuickWindow& window, qreal least);

/// Texts whose painted words are wider or higher than their item, or that stick out of the window
/// to a side, or out of a clipping parent, where no scrolling brings them into sight.
QStringList cutOff(QQuickWindow& window);

/// Things to press that stick out of the window to a side.
QStringList overEdge(QQuickWindow& window);

/// Things to press and texts that lie on each other, in sight.
QStringList overlapping(QQuickWindow& window);

/// Texts in which a word had to be broken because it is wider than its item. A soft hyphen is a
/// place to break; without one a broken word is hard to read.
QStringList brokenWords(QQuickWindow& window);
/// The same of the labels of buttons alone.
QStringList brokenActs(QQuickWindow& window);

/// Things to press that a screen reader cannot press, focus or tell what they are.
QStringList withoutAction(QQuickWindow& window);

/// Things that Tab comes to in another order than they are read in: from the top down, and within a row from the left,
/// in a mirrored page from the right. Two things share a row if half the lower one's height is common to both. What is
/// scrolled counts as one thing to what stands beside it, and so does a gauge, which is read from its zero.
QStringList outOfOrder(QQuickWindow& window);

/// (L1 + 0.05) / (L2 + 0.05) with the relative luminance of WCAG 2.2 (W3C Recommendation, 2023),
/// "contrast ratio" and "relative luminance" in its glossary.
double contrast(const QColor& one, const QColor& other);

/// Texts in sight whose colour stands out less than 4.5 to 1 from what is painted behind them
/// (WCAG 2.2, 1.4.3). What is disabled is left out, as there.
QStringList faint(QQuickWindow& window);

/// Presses Tab until the item that has the keyboard is named so, or starts so, and stands in sight. \returns what is
/// wrong; empty is right.
QString tabUntil(QQuickWindow& window, const QString& name);

/// Lets layouts, loaders, rows that a list makes ahead and queued work come to rest: until nothing is being made and two
/// pictures in a row are the same.
void settle(QQuickWindow& window);

}  // namespace ebbline::screens
