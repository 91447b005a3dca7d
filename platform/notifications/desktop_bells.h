#pragma once
/// \file
/// Bells on a Linux desktop: shown through the notification service of the session (D-Bus name
/// org.freedesktop.Notifications; Desktop Notifications Specification 1.2, freedesktop.org).

#include "platform/notifications/timed_bells.h"

#include <QDBusConnection>

namespace ebbline::notifications {

class DesktopBells : public TimedBells {
    Q_OBJECT

public:
    /// \param file  where the pending moments are kept; empty: only while the program runs
    DesktopBells(const clock::Clock& clock, QString file, QDBusConnection bus = QDBusConnection::sessionBus(),
                 QObject* parent = nullptr);

private Q_SLOTS:
    void onAct(uint id, const QString& act);
    void onClosed(uint id, uint why);

private:
    bool isServiceThere() const override;
    void show(const QString& text) override;

    QDBusConnection m_bus;
    uint m_shown = 0;  ///< the bell on the screen: a new one takes its place
};

}  // namespace ebbline::notifications
