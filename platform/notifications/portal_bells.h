#pragma once
/// \file
/// Bells of a program in a sandbox (Flatpak): shown through the desktop's portal (D-Bus interface
/// org.freedesktop.portal.Notification, version 1; documentation of XDG Desktop Portal, flatpak.github.io).
///
/// The portal does not tell whether a bell was seen: where the person switched the program's notifications off in the
/// desktop's settings, it may take a bell and show none. rang() says that it was taken, leave() what is known.

#include "platform/notifications/timed_bells.h"

#include <QDBusConnection>
#include <QVariantList>

namespace ebbline::notifications {

class PortalBells : public TimedBells {
    Q_OBJECT

public:
    /// \param file  where the pending moments are kept; empty: only while the program runs
    PortalBells(const clock::Clock& clock, QString file, QDBusConnection bus = QDBusConnection::sessionBus(), QObject* parent = nullptr);

    /// A yes that is said again tries anew where the portal refused.
    void allow(bool ring) override;
    /// Leave::noBell until the portal answered that it shows bells; Leave::denied too once it refused one.
    aftercare::Leave leave() const override;

private Q_SLOTS:
    void onAct(const QString& id, const QString& act, const QVariantList& given);

private:
    bool isServiceThere() const override { return m_there; }
    void show(const QString& text) override;
    void askVersion();

    QDBusConnection m_bus;
    bool m_there = false;
    bool m_refused = false;
};

}  // namespace ebbline::notifications
