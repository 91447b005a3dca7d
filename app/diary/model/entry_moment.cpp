#include "app/diary/model/entry_moment.h"

#include "app/diary/model/times.h"

#include <algorithm>
#include <utility>

namespace ebbline::diaryapp {

namespace {

constexpr std::chrono::minutes step{30};

}  // namespace

EntryMoment::EntryMoment(Home& home, QObject* parent) : QObject(parent), m_home(home) {}

void EntryMoment::show(const clock::Moment& at, bool fixed)
{
    m_at = at;
    m_fixed = fixed;
    m_earlier = m_home.clock().now() - at.at >= step;
    m_choosing = false;
    m_asking = false;
    Q_EMIT changed();
}

void EntryMoment::ask()
{
    m_asking = m_earlier && !m_fixed;
    Q_EMIT changed();
}

QString EntryMoment::askText() const
{
    return tr("You began this %1. Is what you typed about then, or about now?").arg(whenText(m_at, m_home.now()));
}

void EntryMoment::keepThen()
{
    m_asking = false;
    Q_EMIT changed();
    Q_EMIT picked();
}

QString EntryMoment::text() const
{
    return isEarlier() ? tr("This is about %1.").arg(whenText(m_at, m_home.now())) : tr("This is about now.");
}

std::vector<clock::LocalDay> EntryMoment::dayList() const
{
    std::vector<clock::LocalDay> days;
    if (!m_home.isOpen() || !m_home.diary().joined())
        return days;
    const auto first = m_home.diary().course().treated.day();
    for (auto day = m_home.now().day(); day >= first; day -= std::chrono::days(1))
        if (!halfHours(day).empty())
            days.push_back(day);
    return days;
}

/// Latest first, as one scrolls back in mind.
std::vector<clock::Instant> EntryMoment::halfHours(clock::LocalDay day) const
{
    std::vector<clock::Instant> moments;
    const clock::Instant treated = m_home.diary().course().treated.at;
    const clock::Instant now = m_home.clock().now();
    for (auto minute = std::chrono::minutes(0); minute < std::chrono::hours(24); minute += step) {
        const clock::Instant at = m_home.zone().instantOf(day, minute);
        if (at >= treated && at <= now && (moments.empty() || moments.back() != at))
            moments.push_back(at);
    }
    std::reverse(moments.begin(), moments.end());
    return moments;
}

QStringList EntryMoment::days() const
{
    QStringList names;
    for (const clock::LocalDay day : dayList())
        names << dayNameText(m_home.zone().moment(m_home.zone().instantOf(day, std::chrono::hours(12))), m_home.now());
    return names;
}

QStringList EntryMoment::times() const
{
    QStringList names;
    if (m_choosing && m_home.isOpen())
        for (const clock::Instant at : halfHours(m_at.day()))
            names << clockText(m_home.zone().moment(at));
    return names;
}

int EntryMoment::day() const
{
    const auto days = dayList();
    const auto found = std::find(days.begin(), days.end(), m_at.day());
    return found == days.end() ? -1 : static_cast<int>(found - days.begin());
}

int EntryMoment::time() const
{
    if (!m_choosing || !m_home.isOpen())
        return -1;
    const auto times = halfHours(m_at.day());
    const auto found = std::find(times.begin(), times.end(), m_at.at);
    return found == times.end() ? -1 : static_cast<int>(found - times.begin());
}

void EntryMoment::choose()
{
    if (dayList().empty())
        return;
    m_choosing = true;
    m_asking = false;
    const auto times = halfHours(m_at.day());
    const auto before = std::find_if(times.begin(), times.end(), [&](clock::Instant at) { return at <= m_at.at; });
    pick(before != times.end() ? *before : halfHours(dayList().front()).front());
}

void EntryMoment::chooseDay(int index)
{
    const auto days = dayList();
    if (index < 0 || index >= static_cast<int>(days.size()))
        return;
    // The same time of that day, or the one nearest to it that can be.
    const auto times = halfHours(days[static_cast<std::size_t>(index)]);
    const auto wish = m_home.zone().instantOf(days[static_cast<std::size_t>(index)], std::chrono::minutes(m_at.minuteOfDay()));
    pick(*std::min_element(times.begin(), times.end(), [&](clock::Instant a, clock::Instant b) {
        return std::chrono::abs(a - wish) < std::chrono::abs(b - wish);
    }));
}

void EntryMoment::chooseTime(int index)
{
    const auto times = halfHours(m_at.day());
    if (index >= 0 && index < static_cast<int>(times.size()))
        pick(times[static_cast<std::size_t>(index)]);
}

void EntryMoment::useNow()
{
    const bool asked = std::exchange(m_asking, false);
    m_choosing = false;
    m_at = m_home.now();
    m_earlier = false;
    Q_EMIT changed();
    Q_EMIT picked();
    if (asked)
        Q_EMIT takenAsNow();
}

void EntryMoment::pick(clock::Instant at)
{
    m_at = m_home.zone().moment(at);
    m_earlier = true;
    Q_EMIT changed();
    Q_EMIT picked();
}

}  // namespace ebbline::diaryapp
