#pragma once
/// \file
/// Three ways to use a page: a finger, a keyboard, and a screen reader. Controls are found by the
/// name that a screen reader says, so whatever has no name cannot be used here either.

#include <QQuickItem>
#include <QQuickWindow>

#include <functional>

namespace ebbline::screens {

/// The control in sight or in reach of scrolling with this accessible name; null if there is none. Words that only say
/// something are no control: spoken() finds those.
QQuickItem* named(QQuickWindow& window, const QString& name);

/// The text on the page, with room to be read, that a screen reader comes to and says in these words; null if there is none.
QQuickItem* spoken(QQuickWindow& window, const QString& words);

/// A finger taps the middle of it, after scrolling there. \returns false if it cannot be hit.
bool touch(QQuickWindow& window, const QString& name);

/// Tab until it has the keyboard. \returns false if Tab never gets there, or if on the way
/// something had the keyboard without showing it or out of sight.
bool tabTo(QQuickWindow& window, const QString& name);

/// A screen reader presses it. \returns false if it offers no such act.
bool press(QQuickWindow& window, const QString& name);

/// An assistive program sets the text of a field. \returns false if there is no such field.
bool write(QQuickWindow& window, const QString& name, const QString& text);

/// The mouse clicks the middle of it, after scrolling there. \returns false if it cannot be hit.
bool click(QQuickWindow& window, const QString& name);

/// The keyboard, of the desk or on the screen, sends keys.
void typeKeys(QQuickWindow& window, const QString& text);

/// A way to act on controls, by their names.
struct Hands {
    std::function<bool(const QString&)> use;                   ///< presses it
    std::function<bool(const QString&, const QString&)> fill;  ///< types into it
};

/// 0 a finger, 1 the keyboard with Space, 2 the keyboard with Return, 3 a screen reader, 4 a mouse.
Hands hands(int kind, QQuickWindow& window);

}  // namespace ebbline::screens
