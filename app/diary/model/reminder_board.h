#pragma once
/// \file
/// Reminders on this device: whether they ring and how far, quiet hours, and the calendar file. The
/// list on the day's page is the truth; a bell only calls to it.

#include "app/diary/model/diary_settings.h"
#include "app/diary/model/home.h"
#include "platform/notifications/bells.h"

#include <QUrl>

namespace ebbline::diaryapp {

class ReminderBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool asking READ isAsking NOTIFY changed FINAL)      ///< the person has not said yet
    Q_PROPERTY(bool ringing READ isRinging NOTIFY changed FINAL)    ///< bells ring
    Q_PROPERTY(bool bellThere READ isBellThere NOTIFY changed FINAL)
    Q_PROPERTY(QString state READ state NOTIFY changed FINAL)       ///< what the bells do, with the time of the next
    Q_PROPERTY(QString silence READ silence NOTIFY changed FINAL)   ///< why nothing rings; empty: it does
    Q_PROPERTY(QString card READ card NOTIFY changed FINAL)         ///< for the day's page: the silence, or that a bell can be tried; empty: neither
    Q_PROPERTY(bool tryOffered READ isTryOffered NOTIFY changed FINAL)  ///< bells ring, and no try was made or put away yet
    Q_PROPERTY(QString late READ late NOTIFY changed FINAL)         ///< that bells may be late, if the person can change it
    Q_PROPERTY(QString tried READ tried NOTIFY changed FINAL)       ///< how a try went
    Q_PROPERTY(bool quiet READ isQuiet WRITE setQuiet NOTIFY changed FINAL)
    Q_PROPERTY(int quietFrom READ quietFrom WRITE setQuietFrom NOTIFY changed FINAL)  ///< hour 0..23
    Q_PROPERTY(int quietTo READ quietTo WRITE setQuietTo NOTIFY changed FINAL)
    Q_PROPERTY(QStringList hours READ hours NOTIFY changed FINAL)
    Q_PROPERTY(QString calendarOutcome READ calendarOutcome NOTIFY changed FINAL)

public:
    /// \param bells  of this device; null: it has none
    ReminderBoard(Home& home, DiarySettings& settings, notifications::Bells* bells, QObject* parent = nullptr);

    bool isAsking() const { return m_state.leave == aftercare::Leave::notAsked; }
    bool isRinging() const { return m_state.leave == aftercare::Leave::granted; }
    bool isBellThere() const { return m_state.leave != aftercare::Leave::noBell; }
    QString state() const;
    QString silence() const;
    QString card() const;
    bool isTryOffered() const { return isRinging() && (!m_settings.isTryDone() || m_tryInSight); }
    QString late() const;
    QString tried() const { return m_tried; }
    bool isQuiet() const { return hoursOfQuiet().enabled; }
    void setQuiet(bool quiet);
    int quietFrom() const { return hoursOfQuiet().fromMinute / 60; }
    void setQuietFrom(int hour);
    int quietTo() const { return hoursOfQuiet().toMinute / 60; }
    void setQuietTo(int hour);
    QStringList hours() const;
    QString calendarOutcome() const { return m_calendarOutcome; }
    const aftercare::BellState& bells() const { return m_state; }

    Q_INVOKABLE void allow(bool ring);
    Q_INVOKABLE void askPunctual();
    /// Rings once. What to look for stays in sight until it is put away or the diary locks.
    Q_INVOKABLE void tryBell();
    Q_INVOKABLE void putTryAway();
    Q_INVOKABLE void saveCalendar(const QUrl& file);
    /// Books anew from what the diary knows now.
    void refresh();
    void setWords();
    /// The diary is gone: nothing rings for it.
    void cancelAll();

Q_SIGNALS:
    void changed();
    void openAsked();
    void failed(const QString& text);

private:
    aftercare::QuietHours hoursOfQuiet() const;
    void keepQuiet(const aftercare::QuietHours& quiet);
    void putOff();

    Home& m_home;
    DiarySettings& m_settings;
    notifications::Bells* m_bells;
    aftercare::BellState m_state;
    QString m_tried;
    bool m_tryInSight = false;  ///< made from the day's page, and how it went stands there
    bool m_trying = false;      ///< a try was asked for, and the device has not said yet how it went
    bool m_refused = false;     ///< the device did not take the last bell
    QString m_calendarOutcome;
};

}  // namespace ebbline::diaryapp
