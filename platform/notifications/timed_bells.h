#pragma once
/// \file
/// Bells of a session whose system shows now and schedules nothing: this object keeps the moments itself, for as long as
/// the program runs, and in a small file beyond that: what came due while the program was closed rings once when it
/// starts. Who shows a bell is for the classes that derive from it; they are never told what it is for.

#include "platform/notifications/bells.h"

#include <QTimer>

#include <optional>

namespace ebbline::notifications {

class TimedBells : public Bells {
    Q_OBJECT

public:
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

protected:
    /// \param file  where the pending moments are kept; empty: only while the program runs
    TimedBells(const clock::Clock& clock, QString file, QObject* parent);

    virtual bool isServiceThere() const = 0;
    /// Says rang() once the service took it, failed() if it did not.
    virtual void show(const QString& text) = 0;
    const BellWords& words() const { return m_words; }

private:
    Done keep();
    void arm();

    const clock::Clock& m_clock;
    QString m_file;
    BellWords m_words;
    std::vector<aftercare::Booking> m_pending;  ///< soonest first
    std::optional<bool> m_allowed;
    QTimer m_timer;
};

}  // namespace ebbline::notifications
