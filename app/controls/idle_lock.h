#pragma once
/// \file
/// Locks a program that nobody uses: the keys of what it holds must not stay in memory. What counts as use is a
/// key, a touch, the mouse, words from an input method, and whatever the program itself says was one (a screen
/// reader acts without any of them). Time counts in the background and asleep too: it is looked at when the
/// program comes back, before anything that is touched there can act.

#include "core/clock/idle_time.h"

#include <QObject>
#include <QQuickWindow>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

namespace ebbline::controls {

class IdleLock : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool ending READ isEnding NOTIFY changed FINAL)  ///< it locks within half a minute

public:
    static constexpr std::chrono::minutes defaultLimit{5};  ///< judgement, no source
    /// A machine that wakes goes on with the timers it fell asleep with, so the clock is looked at again and again.
    static constexpr std::chrono::seconds lookEvery{5};

    /// The clock outlives it.
    explicit IdleLock(const clock::Clock& clock, QObject* parent = nullptr);

    bool isEnding() const { return m_ending; }
    void setLimit(std::chrono::minutes limit);
    /// From now on there is something to lock, or no more.
    void watch(bool open);
    bool isWatching() const { return m_open; }
    /// Looks at the clock now.
    void look();

    /// Somebody did something. \returns false if it came too late: then it has locked.
    Q_INVOKABLE bool used();

Q_SIGNALS:
    void changed();
    /// Lock now. Whoever does says so with watch(false).
    void lockAsked();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void setEnding(bool ending);

    clock::IdleTime m_idle;
    QTimer m_timer;
    bool m_open = false;
    bool m_ending = false;
};

/// What is half typed goes where it belongs, as if its field were left: before something locks. Null does nothing.
void finishTyping(QQuickWindow* window);

/// The nearest of the choices that is not longer; the shortest if all are. \pre choices are sorted, not empty
int lockChoice(const QList<int>& choices, int minutes);

}  // namespace ebbline::controls
