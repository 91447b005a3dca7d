#include "platform/notifications/desktop_bells.h"

#include <QDBusConnectionInterface>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusServiceWatcher>
#include <QVariantMap>

namespace ebbline::notifications {

namespace {

const QString service = QStringLiteral("org.freedesktop.Notifications");
const QString path = QStringLiteral("/org/freedesktop/Notifications");
const QString openAct = QStringLiteral("default");
const QString laterAct = QStringLiteral("later");

}  // namespace

DesktopBells::DesktopBells(const clock::Clock& clock, QString file, QDBusConnection bus, QObject* parent)
    : TimedBells(clock, std::move(file), parent), m_bus(std::move(bus))
{
    auto* watcher = new QDBusServiceWatcher(service, m_bus, QDBusServiceWatcher::WatchForOwnerChange, this);
    connect(watcher, &QDBusServiceWatcher::serviceOwnerChanged, this, &DesktopBells::leaveChanged);
    m_bus.connect(service, path, service, QStringLiteral("ActionInvoked"), this, SLOT(onAct(uint, QString)));
    m_bus.connect(service, path, service, QStringLiteral("NotificationClosed"), this, SLOT(onClosed(uint, uint)));
}

bool DesktopBells::isServiceThere() const
{
    auto* daemon = m_bus.isConnected() ? m_bus.interface() : nullptr;
    return daemon != nullptr
           && (daemon->isServiceRegistered(service) || daemon->activatableServiceNames().value().contains(service));
}

void DesktopBells::show(const QString& text)
{
    auto call = QDBusMessage::createMethodCall(service, path, service, QStringLiteral("Notify"));
    const QVariantMap hints{{QStringLiteral("desktop-entry"), words().desktopEntry},
                            {QStringLiteral("urgency"), QVariant::fromValue(static_cast<uchar>(1))}};
    QStringList acts;
    for (const auto& [act, word] : {std::pair(openAct, words().open), std::pair(laterAct, words().later)})
        if (!word.isEmpty())
            acts << act << word;
    call << words().name << m_shown << QString() << words().title << text << acts << hints << -1;
    auto* answer = new QDBusPendingCallWatcher(m_bus.asyncCall(call), this);
    connect(answer, &QDBusPendingCallWatcher::finished, this, [this](QDBusPendingCallWatcher* done) {
        const QDBusPendingReply<uint> reply = *done;
        done->deleteLater();
        if (reply.isError())
            return Q_EMIT failed();
        m_shown = reply.value();
        Q_EMIT rang();
    });
}

void DesktopBells::onAct(uint id, const QString& act)
{
    if (id != m_shown)
        return;
    // It is answered: the next one is news, whether or not this one was said to be closed yet.
    m_shown = 0;
    if (act == laterAct)
        Q_EMIT laterAsked();
    else
        Q_EMIT openAsked();
}

void DesktopBells::onClosed(uint id, uint)
{
    if (id == m_shown)
        m_shown = 0;
}

}  // namespace ebbline::notifications
