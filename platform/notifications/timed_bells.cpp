#include "platform/notifications/timed_bells.h"

#include <QFile>
#include <QSaveFile>

#include <algorithm>

namespace ebbline::notifications {

namespace {

/// A machine that sleeps, or whose clock is set, does not stop a timer at the right moment.
constexpr std::chrono::milliseconds longestWait = std::chrono::seconds(30);

}  // namespace

TimedBells::TimedBells(const clock::Clock& clock, QString file, QObject* parent) : Bells(parent), m_clock(clock), m_file(std::move(file))
{
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &TimedBells::look);
    QFile kept(m_file);
    if (!m_file.isEmpty() && kept.open(QIODevice::ReadOnly)) {
        if (const auto read = aftercare::readBookings(kept.read(64 * 1024).trimmed().toStdString()))
            m_pending = *read;
        std::sort(m_pending.begin(), m_pending.end());
    }
    arm();
}

void TimedBells::allow(bool ring)
{
    m_allowed = ring;
    Q_EMIT leaveChanged();
    look();
}

aftercare::Leave TimedBells::leave() const
{
    if (!isServiceThere())
        return aftercare::Leave::noBell;
    if (!m_allowed)
        return aftercare::Leave::notAsked;
    return *m_allowed ? aftercare::Leave::granted : aftercare::Leave::denied;
}

Done TimedBells::keep()
{
    if (m_file.isEmpty())
        return {};
    QSaveFile kept(m_file);
    const QByteArray text = QByteArray::fromStdString(aftercare::writeBookings(m_pending));
    if (!kept.open(QIODevice::WriteOnly) || kept.write(text) != text.size() || !kept.commit())
        return fail(Reason::storageFailed, "bells: the pending moments could not be kept");
    return {};
}

Done TimedBells::book(const aftercare::Booking& booking)
{
    m_pending.insert(std::upper_bound(m_pending.begin(), m_pending.end(), booking), booking);
    arm();
    return keep();
}

Done TimedBells::cancel(const aftercare::Booking& booking)
{
    std::erase(m_pending, booking);
    arm();
    return keep();
}

void TimedBells::arm()
{
    if (m_pending.empty())
        return m_timer.stop();
    const auto wait = m_pending.front().at - m_clock.now();
    m_timer.start(std::clamp(wait, std::chrono::milliseconds(0), longestWait));
}

void TimedBells::look()
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

void TimedBells::ringNow()
{
    show(m_words.text);
}

}  // namespace ebbline::notifications
