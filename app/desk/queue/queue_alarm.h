#pragma once
/// \file
/// What the queue says outside of its page: how many rows wait too long with nobody on them, on the rail and
/// on the locked desk's page, and a notice on the desktop when something comes that asks for a call now or has
/// waited too long. Numbers alone: no name and no word about health leaves the desk by this way.
///
/// A locked desk reads nothing and asks no hub. What it says there is reckoned from the moments that were known
/// when it locked.

#include "app/desk/model/queue_board.h"
#include "platform/notifications/bells.h"

#include <QtQml/qqmlregistration.h>

#include <set>

namespace ebbline::deskapp {

class QueueAlarm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString onRail READ onRail NOTIFY changed FINAL)      ///< "2 wait too long"; empty: none
    Q_PROPERTY(QString onDoor READ onDoor NOTIFY changed FINAL)      ///< for the locked desk's page; empty: it was not open before
    Q_PROPERTY(QString onNotices READ onNotices NOTIFY changed FINAL)  ///< whether notices can be shown here, and why not

public:
    /// \param bells  of the desktop; null: there are none
    QueueAlarm(Workplace& workplace, QueueBoard& queue, notifications::Bells* bells, QObject* parent = nullptr);

    QString onRail() const;
    QString onDoor() const;
    QString onNotices() const;
    int overdue() const;
    /// Time has passed.
    void look();
    /// Makes the words anew.
    void retranslate();

Q_SIGNALS:
    void changed();

private:
    void take();
    void ring(const QString& text);

    Workplace& m_workplace;
    QueueBoard& m_queue;
    notifications::Bells* m_bells;
    std::vector<clock::Instant> m_overdueAt;  ///< of each row, when it has waited too long
    std::set<std::string> m_urgent;           ///< the findings to call about that were seen here
    bool m_known = false;                     ///< the queue was read since the desk was unlocked
    int m_told = 0;                           ///< how many overdue rows the last notice, or the unlocking, knew of
    std::optional<clock::Moment> m_lockedAt;
    bool m_invented = false;                  ///< the queue that was read is of invented patients
    bool m_failed = false;                    ///< the desktop took the last notice not
};

}  // namespace ebbline::deskapp
