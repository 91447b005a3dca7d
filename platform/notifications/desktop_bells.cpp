#include "platform/notifications/desktop_bells.h"

#include <QDBusConnectionInterface>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusServiceWatcher>
#include <QFile>
#include <QSaveFile>
#include <QVariantMap>

#include <algorithm>

namespace ebbline::notifications {

namespace {

const QString service = QStringLiteral("org.freedesktop.Notifications");
const QString path = QStringLiteral("/org/freedesktop/Notifications");
const QString openAct = QStringLiteral("default");
const QString laterAct = QStringLiteral("later");

/// A machine that sleeps, or whose clock is set, does not stop a timer at the right moment.
constexpr std::chrono::milliseconds longestWait = std::chrono::seconds(30);

}  // namespace

DesktopBells::DesktopBells(const clock::Clock& clock, QString file, QDBusConnection bus, QObject* parent)
    : Bells(parent), m_clock(clock), m_file(std::move(file)), m_bus(std::move(bus))
{
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &DesktopBells::look);
    auto* watcher = new QDBusServiceWatcher(service, m_bus, QDBusServiceWatcher::WatchForOwnerChange, this);
    connect(watcher, &QDBusServiceWatcher::serviceOwnerChanged, this, &DesktopBells::leaveChanged);
    m_bus.connect(service, path, service, QStringLiteral("ActionInvoked"), this, SLOT(onAct(uint, QString)));
    m_bus.connect(service, path, service, QStringLiteral("NotificationClosed"), this, SLOT(onClosed(uint, uint)));
    QFile kept(m_file);
    if (!m_file.isEmpty() && kept.open(QIODevice::ReadOnly)) {
        if (const auto read = aftercare::readBookings(kept.read(64 * 1024).trimmed().toStdString()))
            m_pending = *read;
        std::sort(m_pending.begin(), m_pending.end());
    }
    arm();
}

void DesktopBells::allow(bool ring)
{
    m_allowed = ring;
    Q_EMIT leaveChanged();
    look();
}

bool DesktopBells::isServiceThere() const
{
    auto* daemon = m_bus.isConnected() ? m_bus.interface() : nullptr;
    return daemon != nullptr
           && (daemon->isServiceRegistered(service) || daemon->activatableServiceNames().value().contains(service));
}

aftercare::Leave DesktopBells::leave() const
{
    if (!isServiceThere())
        return aftercare::Leave::noBell;
    if (!m_allowed)
        return aftercare::Leave::notAsked;
    return *m_allowed ? aftercare::Leave::granted : aftercare::Leave::denied;
}

Done DesktopBells::keep()
{
    if (m_file.isEmpty())
        return {};
    QSaveFile kept(m_file);
    const QByteArray text = QByteArray::fromStdString(aftercare::writeBookings(m_pending));
    if (!kept.open(QIODevice::WriteOnly) || kept.write(text) != text.size() || !kept.commit())
        return fail(Reason::storageFailed, "bells: the pending moments could not be kept");
    return {};
}

Done DesktopBells::book(const aftercare::Booking& booking)
{
    m_pending.insert(std::upper_bound(m_pending.begin(), m_pending.end(), booking), booking);
    arm();
    return keep();
}

Done DesktopBells::cancel(const aftercare::Booking& booking)
{
    std::erase(m_pending, booking);
    arm();
    return keep();
}

void DesktopBells::arm()
{
    if (m_pending.empty())
        return m_timer.stop();
    const auto wait = m_pending.front().at - m_clock.now();
    m_timer.start(std::clamp(wait, std::chrono::milliseconds(0), longestWait));
}

void DesktopBells::look()
{
    const clock::Instant now = m_clock.now();
    const auto later = std::find_if(m_pending.begin(), m_pending.end(), [&](const aftercare::Booking& booking) { return booking.at > now; });
    if (later != m_pending.begin() && leave() == aftercare::Leave::granted) {
        const bool asks = std::prev(later)->asksToOpen;
        m_pending.erase(m_pending.begin(), later);
        (void)keep();  // at worst it rings once more after a restart
        show(asks ? m_words.asksToOpen : m_words.text);
    }
    // Without leave the moments stay: the list in the program says what is due.
    if (!m_pending.empty() && m_pending.front().at <= now)
        m_timer.start(longestWait);
    else
        arm();
}

void DesktopBells::ringNow()
{
    show(m_words.text);
}

void DesktopBells::show(const QString& text)
{
    auto call = QDBusMessage::createMethodCall(service, path, service, QStringLiteral("Notify"));
    const QVariantMap hints{{QStringLiteral("desktop-entry"), m_words.desktopEntry},
                            {QStringLiteral("urgency"), QVariant::fromValue(static_cast<uchar>(1))}};
    QStringList acts;
    for (const auto& [act, word] : {std::pair(openAct, m_words.open), std::pair(laterAct, m_words.later)})
        if (!word.isEmpty())
            acts << act << word;
    call << m_words.name << m_shown << QString() << m_words.title << text << acts << hints << -1;
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
