#include "app/diary/model/reminder_board.h"

#include "app/diary/model/chosen_place.h"
#include "app/diary/model/times.h"
#include "app/diary/model/words.h"

#include <QLocale>

namespace ebbline::diaryapp {

namespace {

constexpr std::chrono::minutes putOffBy{30};

}  // namespace

ReminderBoard::ReminderBoard(Home& home, DiarySettings& settings, notifications::Bells* bells, QObject* parent)
    : QObject(parent), m_home(home), m_settings(settings), m_bells(bells)
{
    m_state.leave = aftercare::Leave::noBell;
    connect(&home, &Home::changed, this, &ReminderBoard::refresh);
    connect(&home, &Home::openChanged, this, [this] {
        m_tryInSight = false;
        m_tried.clear();
        refresh();
    });
    if (!m_bells)
        return;
    connect(m_bells, &notifications::Bells::leaveChanged, this, &ReminderBoard::refresh);
    connect(m_bells, &notifications::Bells::openAsked, this, &ReminderBoard::openAsked);
    connect(m_bells, &notifications::Bells::laterAsked, this, &ReminderBoard::putOff);
    connect(m_bells, &notifications::Bells::rang, this, [this] {
        m_trying = false;
        m_refused = false;
        m_home.touch();  // something is due: the day shows it
    });
    connect(m_bells, &notifications::Bells::failed, this, [this] {
        m_refused = true;
        if (m_trying) {
            m_tried = tr("It did not ring. This device refused it.");
            m_settings.setTryDone(false);
        }
        m_trying = false;
        Q_EMIT changed();
    });
    setWords();
    if (const auto may = m_settings.mayRing())
        m_bells->allow(*may);
    refresh();
}

void ReminderBoard::setWords()
{
    if (!m_bells)
        return;
    // Anybody may see these: nothing in them is about health.
    m_bells->setWords({tr("Diary"), tr("Reminder"), tr("There is something for you."),
                       tr("Please open your diary, so that it can go on."), tr("Open"), tr("In 30 minutes")});
}

void ReminderBoard::refresh()
{
    if (m_bells) {
        m_state.leave = m_bells->leave();
        // A diary that is closed changes nothing: what was booked still rings.
        if (m_home.isOpen() && m_home.diary().joined())
            // A phone that another one replaced rings for nothing any more.
            m_state = aftercare::bringUpToDate(*m_bells, m_home.diary().replaced() ? std::vector<clock::Instant>{} : m_home.diary().bellMoments(),
                                               m_home.clock().now());
    }
    Q_EMIT changed();
}

void ReminderBoard::cancelAll()
{
    if (m_bells)
        (void)aftercare::bringUpToDate(*m_bells, {}, m_home.clock().now());
    refresh();
}

QString ReminderBoard::state() const
{
    if (const QString why = silence(); !why.isEmpty())
        return why;
    if (m_state.problem)
        return tr("This device does not take all reminders. Look into your diary each day.");
    if (!m_state.next)
        return tr("Reminders ring. None is coming up.");
    const clock::Moment now = m_home.now();
    const QString next = whenText(m_home.zone().moment(*m_state.next), now);
    if (m_state.complete)
        return tr("Reminders ring. Next: %1.").arg(next);
    return tr("Reminders ring. Next: %1. Open the diary by %2, so that they go on.")
        .arg(next, whenText(m_home.zone().moment(*m_state.goodUntil), now));
}

QString ReminderBoard::silence() const
{
    switch (m_state.leave) {
    case aftercare::Leave::granted:
        if (!m_refused)
            return {};
        [[fallthrough]];
    case aftercare::Leave::denied: return tr("Reminders do not ring. What is due stands here.");
    case aftercare::Leave::noBell: return tr("This device can not ring. What is due stands here.");
    case aftercare::Leave::notAsked: break;
    }
    return tr("Reminders do not ring yet. What is due stands here.");
}

QString ReminderBoard::card() const
{
    return isTryOffered() && !m_refused ? tr("Reminders ring now. Try one before you leave the clinic.") : silence();
}

QString ReminderBoard::late() const
{
    return isRinging() && !m_bells->isPunctual() ? tr("To save power, this phone may ring some minutes late.") : QString();
}

void ReminderBoard::askPunctual()
{
    if (m_bells)
        m_bells->askPunctual();
}

void ReminderBoard::allow(bool ring)
{
    m_settings.setMayRing(ring);
    m_refused = false;
    if (m_bells)
        m_bells->allow(ring);
    m_tried.clear();
    refresh();
}

void ReminderBoard::tryBell()
{
    if (!m_bells || !isRinging())
        return;
    m_tryInSight = isTryOffered();
    m_settings.setTryDone(true);
    m_trying = true;
    m_tried = tr("Look at the edge of your screen. It must say: “%1”").arg(tr("There is something for you."));
    m_bells->ringNow();
    Q_EMIT changed();
}

void ReminderBoard::putTryAway()
{
    m_tryInSight = false;
    m_tried.clear();
    m_settings.setTryDone(true);
    Q_EMIT changed();
}

/// What rang last comes again in half an hour. What is older stays due: nobody asked to put that off.
void ReminderBoard::putOff()
{
    const clock::Instant later = m_home.clock().now() + putOffBy;
    if (!m_home.isOpen() || !m_home.diary().joined()) {
        (void)m_bells->book({later, false});
        return;
    }
    const auto due = m_home.diary().today().dueNow;  // oldest first
    for (const patient::ReminderView& view : due)
        if (const Done put = patient::dueAt(view) < patient::dueAt(due.back()) ? Done{} : m_home.diary().answerReminder(view.reminder.key, records::ReminderAnswer::later, later); !put)
            Q_EMIT failed(errorText(put.error()));
    m_home.touch();
}

aftercare::QuietHours ReminderBoard::hoursOfQuiet() const
{
    return m_home.isOpen() ? m_home.diary().quietHours() : aftercare::QuietHours{};
}

void ReminderBoard::keepQuiet(const aftercare::QuietHours& quiet)
{
    if (!m_home.isOpen())
        return;
    if (const Done kept = m_home.diary().setQuietHours(quiet); !kept)
        Q_EMIT failed(errorText(kept.error()));
    m_home.touch();
}

void ReminderBoard::setQuiet(bool quiet)
{
    auto hours = hoursOfQuiet();
    hours.enabled = quiet;
    keepQuiet(hours);
}

void ReminderBoard::setQuietFrom(int hour)
{
    auto hours = hoursOfQuiet();
    hours.fromMinute = std::clamp(hour, 0, 23) * 60;
    keepQuiet(hours);
}

void ReminderBoard::setQuietTo(int hour)
{
    auto hours = hoursOfQuiet();
    hours.toMinute = std::clamp(hour, 0, 23) * 60;
    keepQuiet(hours);
}

QStringList ReminderBoard::hours() const
{
    QStringList texts;
    for (int hour = 0; hour < 24; ++hour)
        texts << timeText(hour * 60);
    return texts;
}

void ReminderBoard::saveCalendar(const QUrl& file)
{
    if (!m_home.isOpen())
        return;
    const auto calendar = m_home.diary().calendar(tr("Reminder from your diary").toStdString(),
                                                  QLocale(m_settings.languageCode()).bcp47Name().toStdString());
    if (!calendar)
        m_calendarOutcome = calendar.error().reason == Reason::notEnough ? tr("No reminder is coming up.") : errorText(calendar.error());
    else if (!writeChosen(nameOfChosen(file), QByteArray::fromStdString(*calendar)))
        m_calendarOutcome = tr("The file could not be written there. Choose another place.");
    else
        m_calendarOutcome = tr("Done. Open the file with your calendar.");
    Q_EMIT changed();
}

}  // namespace ebbline::diaryapp
