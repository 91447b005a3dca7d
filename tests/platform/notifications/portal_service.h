#pragma once
/// \file
/// A desktop's portal for notifications on the test's own bus: writes down what it is told, and refuses if the person
/// said so in the desktop's settings.

#include <QDBusConnection>
#include <QDBusContext>
#include <QObject>
#include <QVariantMap>

namespace ebbline::notifications {

class PortalService : public QObject, protected QDBusContext {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Notification")
    Q_PROPERTY(uint version READ version)

public:
    struct Shown {
        QString id;
        QVariantMap what;
        QList<QVariantMap> buttons;
    };

    explicit PortalService(QDBusConnection bus);
    bool start();
    void stop();
    uint version() const { return 2; }
    const QList<Shown>& shown() const { return m_shown; }
    /// A person touches an act of the bell shown last, or of another program's bell.
    void touch(const QString& act) { Q_EMIT ActionInvoked(m_shown.last().id, act, {}); }
    void touchOther() { Q_EMIT ActionInvoked(QStringLiteral("of somebody else"), QStringLiteral("open"), {}); }

    QString refusal;  ///< the error that every bell gets; empty: none

public Q_SLOTS:
    void AddNotification(const QString& id, const QVariantMap& what);

Q_SIGNALS:
    void ActionInvoked(const QString& id, const QString& act, const QVariantList& given);

private:
    QDBusConnection m_bus;
    QList<Shown> m_shown;
};

}  // namespace ebbline::notifications
