#pragma once
/// \file
/// A session bus that only the test knows, and a notification service on it that writes down what it is
/// told and acts as a person at the screen would.

#include <QDBusConnection>
#include <QObject>
#include <QProcess>
#include <QStringList>
#include <QVariantMap>

namespace ebbline::notifications {

class PrivateBus {
public:
    /// Throws std::runtime_error if there is none.
    PrivateBus();
    ~PrivateBus();
    QDBusConnection connection(const QString& name) const;
    QString address() const { return m_address; }

private:
    QProcess m_daemon;
    QString m_address;
};

struct Shown {
    uint id;
    uint replaces;
    QString program, title, text;
    QStringList acts;
    QVariantMap hints;
};

class NotificationService : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.Notifications")

public:
    explicit NotificationService(QDBusConnection bus) : m_bus(std::move(bus)) {}
    bool start();
    void stop();
    const QList<Shown>& shown() const { return m_shown; }
    /// A person touches an act of the bell shown last.
    void touch(const QString& act);

public Q_SLOTS:
    uint Notify(const QString& program, uint replaces, const QString& icon, const QString& title, const QString& text,
                const QStringList& acts, const QVariantMap& hints, int timeout);
    QStringList GetCapabilities() const { return {QStringLiteral("body"), QStringLiteral("actions")}; }
    void CloseNotification(uint id);

Q_SIGNALS:
    void ActionInvoked(uint id, const QString& act);
    void NotificationClosed(uint id, uint why);

private:
    QDBusConnection m_bus;
    QList<Shown> m_shown;
    uint m_next = 1;
};

}  // namespace ebbline::notifications
