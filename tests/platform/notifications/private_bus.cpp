#include "tests/platform/notifications/private_bus.h"


#include <stdexcept>

namespace ebbline::notifications {

PrivateBus::PrivateBus()
{
    m_daemon.start(QStringLiteral(EBBLINE_DBUS_DAEMON),
                   {QStringLiteral("--config-file=" EBBLINE_BUS_CONFIG), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
    if (!m_daemon.waitForStarted() || !m_daemon.waitForReadyRead(10'000))
        throw std::runtime_error("no private bus: " + m_daemon.readAllStandardError().toStdString());
    m_address = QString::fromUtf8(m_daemon.readLine()).trimmed();
}

PrivateBus::~PrivateBus()
{
    m_daemon.terminate();
    m_daemon.waitForFinished();
}

QDBusConnection PrivateBus::connection(const QString& name) const
{
    return QDBusConnection::connectToBus(m_address, name);
}

bool NotificationService::start()
{
    return m_bus.registerObject(QStringLiteral("/org/freedesktop/Notifications"), this,
                                QDBusConnection::ExportAllSlots | QDBusConnection::ExportAllSignals)
           && m_bus.registerService(QStringLiteral("org.freedesktop.Notifications"));
}

void NotificationService::stop()
{
    m_bus.unregisterService(QStringLiteral("org.freedesktop.Notifications"));
    m_bus.unregisterObject(QStringLiteral("/org/freedesktop/Notifications"));
}

uint NotificationService::Notify(const QString& program, uint replaces, const QString&, const QString& title,
                                 const QString& text, const QStringList& acts, const QVariantMap& hints, int)
{
    const uint id = replaces != 0 ? replaces : m_next++;
    m_shown << Shown{id, replaces, program, title, text, acts, hints};
    return id;
}

void NotificationService::touch(const QString& act)
{
    const uint id = m_shown.last().id;
    Q_EMIT ActionInvoked(id, act);
    Q_EMIT NotificationClosed(id, 2);
}

void NotificationService::CloseNotification(uint id)
{
    Q_EMIT NotificationClosed(id, 3);
}

}  // namespace ebbline::notifications
