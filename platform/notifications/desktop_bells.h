#pragma once
/// \file
/// Bells on a Linux desktop: shown through the notification service of the session (D-Bus name
/// org.freedesktop.Notifications; Desktop Notifications Specification 1.2, freedesktop.org).
///
/// The service shows now and schedules nothing, so this object keeps the bells itself, for as long as
/// the program runs, and in a small file of moments beyond that: what came due while the program was
/// closed rings once when it starts. It is never told what a bell is for.

#include "platform/notifications/bells.h"

#include <QDBusConnection>
#include <QTimer>

namespace ebbline::notifications {

class DesktopBells : public Bells {
    Q_OBJECT

public:
    /// \param file  where the pending moments are kept; empty: only while the program runs
    DesktopBells(const clock::Clock& clock, QString file, QDBusConnection bus = QDBusConnection::sessionBus(),
                 QObject* parent = nullptr);

    void setWords(const BellWords& words) override { m_words = words; }
    void allow(bool ring) override;

    aftercare::Leave leave() const override;
    std::size_t capacity() const override { return 10 * aftercare::mostBooked; }
    Result<std::vector<aftercare::Booking>> pending() const override { return m_pending; }
    Done book(const aftercare::Booking& booking) override;
    Done cancel(const aftercare::Booking& booking) override;

    void ringNow() override;
    /// Rings what has come due; called by a timer, and by whoever knows that time has passed.
    void look();

private Q_SLOTS:
    void onAct(uint id, const QString& act);
    void onClosed(uint id, uint why);

private:
    bool isServiceThere() const;
    Done keep();
    void arm();
    void show(const QString& text);

    const clock::Clock& m_clock;
    QString m_file;
    QDBusConnection m_bus;
    BellWords m_words;
    std::vector<aftercare::Booking> m_pending;  ///< soonest first
    std::optional<bool> m_allowed;
    QTimer m_timer;
    uint m_shown = 0;  ///< the bell on the screen: a new one takes its place
};

}  // namespace ebbline::notifications
