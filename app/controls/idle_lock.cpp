#include "app/controls/idle_lock.h"

#include <QGuiApplication>
#include <QInputMethod>
#include <QInputMethodEvent>
#include <QQuickItem>

#include <algorithm>

namespace ebbline::controls {

namespace {

/// What the program sends itself (a pointer that rests while the page moves under it) is no use.
bool isUse(QEvent* event)
{
    switch (event->type()) {
    case QEvent::ShortcutOverride: return true;  // all that is seen of a key which is a shortcut
    case QEvent::InputMethod: {
        const auto* typed = static_cast<QInputMethodEvent*>(event);
        return !typed->commitString().isEmpty() || !typed->preeditString().isEmpty();
    }
    case QEvent::KeyPress:
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonRelease:
    case QEvent::MouseMove:
    case QEvent::Wheel:
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
    case QEvent::TabletPress:
    case QEvent::TabletMove:
    case QEvent::NativeGesture: return event->spontaneous();
    default: return false;
    }
}

}  // namespace

IdleLock::IdleLock(const clock::Clock& clock, QObject* parent) : QObject(parent), m_idle(clock, defaultLimit)
{
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &IdleLock::look);
    qGuiApp->installEventFilter(this);
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, &IdleLock::look);
}

void IdleLock::setLimit(std::chrono::minutes limit)
{
    m_idle.setLimit(limit);
    look();
}

void IdleLock::watch(bool open)
{
    m_open = open;
    m_idle.begin();
    look();
}

void IdleLock::look()
{
    using State = clock::IdleTime::State;
    if (!m_open) {
        m_timer.stop();
        return setEnding(false);
    }
    const State state = m_idle.state();
    if (state == State::over) {
        setEnding(false);
        Q_EMIT lockAsked();
        if (!m_open)
            return;
    }
    setEnding(state == State::ending);
    m_timer.start(std::clamp<std::chrono::milliseconds>(m_idle.untilChange(), std::chrono::milliseconds(1), lookEvery));
}

bool IdleLock::used()
{
    if (!m_open)
        return true;
    m_idle.used();
    if (m_ending || m_idle.state() == clock::IdleTime::State::over) {
        look();
        return m_open;
    }
    return true;
}

void IdleLock::setEnding(bool ending)
{
    if (ending == m_ending)
        return;
    m_ending = ending;
    Q_EMIT changed();
}

bool IdleLock::eventFilter(QObject* watched, QEvent* event)
{
    // A touch that came too late is meant for a page that is gone: nothing else gets it.
    if (m_open && isUse(event) && !used())
        return true;
    return QObject::eventFilter(watched, event);
}

void finishTyping(QQuickWindow* window)
{
    QGuiApplication::inputMethod()->commit();
    if (window != nullptr && window->activeFocusItem() != nullptr)
        window->activeFocusItem()->setFocus(false, Qt::OtherFocusReason);
}

int lockChoice(const QList<int>& choices, int minutes)
{
    const auto longer = std::upper_bound(choices.begin(), choices.end(), minutes);
    return longer == choices.begin() ? choices.first() : *std::prev(longer);
}

}  // namespace ebbline::controls
