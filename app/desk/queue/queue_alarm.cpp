#include "app/desk/queue/queue_alarm.h"

#include "app/desk/model/times.h"

#include <algorithm>

namespace ebbline::deskapp {

QueueAlarm::QueueAlarm(Workplace& workplace, QueueBoard& queue, notifications::Bells* bells, QObject* parent)
    : QObject(parent), m_workplace(workplace), m_queue(queue), m_bells(bells)
{
    connect(&queue, &QueueBoard::changed, this, &QueueAlarm::take);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        m_known = false;
        m_urgent.clear();
        if (m_workplace.isOpen()) {
            m_lockedAt.reset();
            take();
        } else {
            // Invented patients wait for nobody.
            if (m_invented) {
                m_overdueAt.clear();
                m_told = 0;
            } else if (!m_lockedAt) {
                m_lockedAt = m_workplace.now();
            }
            Q_EMIT changed();
        }
    });
    if (m_bells != nullptr) {
        m_bells->allow(true);
        connect(m_bells, &notifications::Bells::leaveChanged, this, &QueueAlarm::changed);
        connect(m_bells, &notifications::Bells::failed, this, [this] {
            m_failed = true;
            Q_EMIT changed();
        });
        connect(m_bells, &notifications::Bells::rang, this, [this] {
            m_failed = false;
            Q_EMIT changed();
        });
    }
}

int QueueAlarm::overdue() const
{
    const auto now = m_workplace.now().at;
    return static_cast<int>(std::count_if(m_overdueAt.begin(), m_overdueAt.end(), [&](const clock::Instant& at) { return now > at; }));
}

QString QueueAlarm::onRail() const
{
    const int count = m_workplace.isOpen() ? overdue() : 0;
    return count > 0 ? tr("%Ln wait(s) too long", nullptr, count) : QString();
}

QString QueueAlarm::onDoor() const
{
    if (m_workplace.isOpen() || !m_lockedAt) {
        return {};
    }
    const int count = overdue();
    const auto locked = tr("Locked since %1. While it is locked, this desk asks the hub for nothing: what comes now shows when you unlock it.")
                            .arg(whenText(*m_lockedAt, m_workplace.now()));
    return count > 0 ? tr("%Ln in the queue wait(s) too long.", nullptr, count) + u' ' + locked : locked;
}

QString QueueAlarm::onNotices() const
{
    if (m_bells == nullptr || m_bells->leave() == aftercare::Leave::noBell) {
        return tr("Notices on the desktop are not possible here: this computer offers no service for them. Only the open desk tells.");
    }
    if (m_failed) {
        return tr("The computer did not take the last notice. Only the open desk tells for sure.");
    }
    return tr("When somebody is to be called now, or waits too long, a notice without a name shows on the desktop. A locked desk hears nothing new.");
}

void QueueAlarm::take()
{
    if (!m_workplace.isOpen()) {
        return;  // what was known when it locked still counts
    }
    m_invented = m_workplace.isDemo();
    m_overdueAt.clear();
    std::set<std::string> urgent;
    bool fresh = false;
    for (const auto& row : m_queue.waiting()) {
        if (!triage::isVisitOfLongAgo(row, m_workplace.now())) {
            m_overdueAt.push_back(row.overdueAt);
        }
        for (const auto& finding : row.findings) {
            if (finding.urgency <= recovery::Urgency::callNow) {
                const auto name = keyOf(row.course).toStdString() + finding.key;
                fresh = fresh || (m_known && !m_urgent.contains(name) && finding.acts.empty());
                urgent.insert(name);
            }
        }
    }
    // What was once told and closed is news again only if it comes as another finding.
    m_urgent.insert(urgent.begin(), urgent.end());
    if (!m_known) {
        m_told = overdue();
        m_known = true;
    } else if (fresh) {
        ring(tr("Somebody is to be called now. Open the desk."));
    }
    look();
}

void QueueAlarm::look()
{
    const int count = overdue();
    if (count > m_told) {
        ring(tr("%Ln in the queue wait(s) too long.", nullptr, count));
    }
    m_told = count;
    Q_EMIT changed();
}

void QueueAlarm::ring(const QString& text)
{
    if (m_bells == nullptr || m_workplace.isDemo()) {
        return;
    }
    m_bells->setWords({QStringLiteral("Ebbline"), tr("Clinic's desk"), text, text, tr("Open the desk"), {}, QStringLiteral("ebbline-desk")});
    m_bells->ringNow();
}

void QueueAlarm::retranslate()
{
    Q_EMIT changed();
}

}  // namespace ebbline::deskapp
