#include "platform/notifications/portal_bells.h"

#include <QDBusMessage>
#include <QDBusMetaType>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusServiceWatcher>
#include <QDBusVariant>
#include <QVariantMap>

#include <algorithm>
#include <array>

namespace ebbline::notifications {

namespace {

const QString service = QStringLiteral("org.freedesktop.portal.Desktop");
const QString path = QStringLiteral("/org/freedesktop/portal/desktop");
const QString interface = QStringLiteral("org.freedesktop.portal.Notification");
/// One bell at a time: a new one takes the place of the one before.
const QString bell = QStringLiteral("bell");
const QString openAct = QStringLiteral("open");
const QString laterAct = QStringLiteral("later");
const std::array refusals{QStringLiteral("org.freedesktop.portal.Error.NotAllowed"), QStringLiteral("org.freedesktop.DBus.Error.AccessDenied")};

}  // namespace

PortalBells::PortalBells(const clock::Clock& clock, QString file, QDBusConnection bus, QObject* parent)
    : TimedBells(clock, std::move(file), parent), m_bus(std::move(bus))
{
    qDBusRegisterMetaType<QList<QVariantMap>>();
    auto* watcher = new QDBusServiceWatcher(service, m_bus, QDBusServiceWatcher::WatchForOwnerChange, this);
    connect(watcher, &QDBusServiceWatcher::serviceOwnerChanged, this, [this](const QString&, const QString&, const QString& owner) {
        m_there = false;
        Q_EMIT leaveChanged();
        if (!owner.isEmpty())
            askVersion();
    });
    m_bus.connect(service, path, interface, QStringLiteral("ActionInvoked"), this, SLOT(onAct(QString, QString, QVariantList)));
    askVersion();
}

/// Also starts a portal that the session starts on demand.
void PortalBells::askVersion()
{
    auto call = QDBusMessage::createMethodCall(service, path, QStringLiteral("org.freedesktop.DBus.Properties"), QStringLiteral("Get"));
    call << interface << QStringLiteral("version");
    auto* answer = new QDBusPendingCallWatcher(m_bus.asyncCall(call), this);
    connect(answer, &QDBusPendingCallWatcher::finished, this, [this](QDBusPendingCallWatcher* done) {
        const QDBusPendingReply<QDBusVariant> reply = *done;
        done->deleteLater();
        const bool there = !reply.isError() && reply.value().variant().toUInt() >= 1;
        if (there == m_there)
            return;
        m_there = there;
        Q_EMIT leaveChanged();
        look();
    });
}

void PortalBells::allow(bool ring)
{
    m_refused = false;
    TimedBells::allow(ring);
}

aftercare::Leave PortalBells::leave() const
{
    const aftercare::Leave said = TimedBells::leave();
    return said == aftercare::Leave::granted && m_refused ? aftercare::Leave::denied : said;
}

void PortalBells::show(const QString& text)
{
    QVariantMap shown{{QStringLiteral("title"), words().title}, {QStringLiteral("body"), text}, {QStringLiteral("priority"), QStringLiteral("normal")}};
    // What touching the bell itself does has no word of its own here.
    if (!words().open.isEmpty())
        shown.insert(QStringLiteral("default-action"), openAct);
    if (!words().later.isEmpty()) {
        const QVariantMap later{{QStringLiteral("label"), words().later}, {QStringLiteral("action"), laterAct}};
        shown.insert(QStringLiteral("buttons"), QVariant::fromValue(QList<QVariantMap>({later})));
    }
    auto call = QDBusMessage::createMethodCall(service, path, interface, QStringLiteral("AddNotification"));
    call << bell << shown;
    auto* answer = new QDBusPendingCallWatcher(m_bus.asyncCall(call), this);
    connect(answer, &QDBusPendingCallWatcher::finished, this, [this](QDBusPendingCallWatcher* done) {
        const QDBusPendingReply<> reply = *done;
        done->deleteLater();
        if (!reply.isError())
            return Q_EMIT rang();
        m_refused = std::find(refusals.begin(), refusals.end(), reply.error().name()) != refusals.end();
        Q_EMIT failed();
        if (m_refused)
            Q_EMIT leaveChanged();
    });
}

void PortalBells::onAct(const QString& id, const QString& act, const QVariantList&)
{
    if (id != bell)
        return;
    if (act == laterAct)
        Q_EMIT laterAsked();
    else if (act == openAct)
        Q_EMIT openAsked();
}

}  // namespace ebbline::notifications
