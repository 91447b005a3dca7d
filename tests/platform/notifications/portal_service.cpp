#include "tests/platform/notifications/portal_service.h"

#include <QDBusArgument>
#include <QDBusMetaType>

namespace ebbline::notifications {

namespace {

const QString name = QStringLiteral("org.freedesktop.portal.Desktop");
const QString path = QStringLiteral("/org/freedesktop/portal/desktop");

}  // namespace

PortalService::PortalService(QDBusConnection bus) : m_bus(std::move(bus))
{
    qDBusRegisterMetaType<QList<QVariantMap>>();
}

bool PortalService::start()
{
    return m_bus.registerObject(path, this,
                                QDBusConnection::ExportAllSlots | QDBusConnection::ExportAllSignals | QDBusConnection::ExportAllProperties)
           && m_bus.registerService(name);
}

void PortalService::stop()
{
    m_bus.unregisterService(name);
    m_bus.unregisterObject(path);
}

void PortalService::AddNotification(const QString& id, const QVariantMap& what)
{
    if (!refusal.isEmpty())
        return sendErrorReply(refusal, QStringLiteral("not allowed"));
    m_shown << Shown{id, what, qdbus_cast<QList<QVariantMap>>(what.value(QStringLiteral("buttons")))};
}

}  // namespace ebbline::notifications
