// The visit that a call brings forward: asked for its day and hour, since the phone goes by them.
#include "app/desk/queue/call_board.h"

#include "app/desk/model/times.h"

#include <QLocale>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

QString shownText(const aftercare::Visit& visit, const aftercare::Zone& zone)
{
    const auto date = QLocale().toString(dateOf(visit.day), QLocale::LongFormat);
    return visit.minute ? CallBoard::tr("%1, %2", "date, time").arg(date, clockText(aftercare::momentOf(visit, zone))) : date;
}

}  // namespace

void CallBoard::forgetVisit()
{
    m_opened.reset();
    m_asksVisit = false;
    m_answered = m_findings;
    m_visitDay.clear();
    m_visitTime.clear();
}

void CallBoard::startVisit(const QString& course, const QString& finding)
{
    start(course);
    if (const auto key = finding.toStdString(); isShown() && !key.empty()) {
        if (std::ranges::find(m_findings, key) == m_findings.end()) {
            leave();
            return;
        }
        m_answered = {key};
    }
    if (m_opened) {
        broughtForward();
    }
}

void CallBoard::broughtForward()
{
    if (!isShown() || !m_workplace.isOpen()) {
        return;
    }
    const auto did = tr("Visit brought forward: %1");
    if (!m_opened && m_answered.empty()) {
        note(records::Contact::visitBroughtForward, did);
    } else if (!m_opened) {
        act(m_answered, records::Act::visitBroughtForward, records::Outcome::none, did);
    } else if (const auto asked = visit()) {
        settleNoted(m_workplace.desk().moveVisit(m_course, aftercare::momentOf(*asked, m_workplace.zone()), m_answered, m_note.trimmed().toStdString()),
                    did);
    } else {
        m_asksVisit = true;
        Q_EMIT changed();
    }
}

void CallBoard::setVisitDay(const QString& day)
{
    if (day != m_visitDay) {
        m_visitDay = day;
        Q_EMIT changed();
    }
}

void CallBoard::setVisitTime(const QString& time)
{
    if (time != m_visitTime) {
        m_visitTime = time;
        Q_EMIT changed();
    }
}

/// From today on, or the day after the treatment, up to the latest day that was ever agreed, so that a slip can be put right; up to
/// the last possible day if that one is past.
std::pair<clock::LocalDay, clock::LocalDay> CallBoard::visitDays() const
{
    const auto today = m_workplace.now().day();
    const auto treated = m_opened->treated.day();
    const auto first = std::max(today, treated + std::chrono::days(aftercare::firstVisitDay));
    const auto last = treated + std::chrono::days(aftercare::lastVisitDay);
    const auto agreed = std::min(m_opened->latest, last);
    return {first, agreed >= first ? agreed : last};
}

std::optional<aftercare::Visit> CallBoard::visit() const
{
    const auto day = dayFrom(m_visitDay);
    const auto minute = minuteFrom(m_visitTime);
    if (!m_opened || !day || (!minute && !m_visitTime.trimmed().isEmpty())) {
        return std::nullopt;
    }
    const auto [first, last] = visitDays();
    const aftercare::Visit visit{*day, minute};
    const auto moment = aftercare::momentOf(visit, m_workplace.zone());
    const bool past = minute && moment.at <= m_workplace.now().at;
    const bool same = visit == aftercare::visitOf(m_opened->followUp);
    return *day < first || *day > last || past || same || !aftercare::check(visit, m_opened->treated) ? std::nullopt : std::optional(visit);
}

QString CallBoard::rangeText() const
{
    const auto text = [](clock::LocalDay day) { return QLocale().toString(dateOf(day), QLocale::LongFormat); };
    const auto [first, last] = visitDays();
    return tr("Choose a day from %1 to %2, and not what is agreed already.", "date, date").arg(text(first), text(last));
}

QString CallBoard::visitAgreed() const
{
    return m_opened ? tr("Agreed so far: %1").arg(shownText(aftercare::visitOf(m_opened->followUp), m_workplace.zone())) : QString();
}

QString CallBoard::visitUntold() const
{
    return isShown() && !m_opened ? tr("No phone has this course: a visit that is brought forward is only noted here, and no phone shows it. Tell her the day.")
                                  : QString();
}

bool CallBoard::isVisitMovable() const
{
    const auto [first, last] = m_opened ? visitDays() : std::pair<clock::LocalDay, clock::LocalDay>{};
    return m_opened && first <= last;
}

QString CallBoard::visitTooLate() const
{
    return m_asksVisit && !isVisitMovable()
               ? tr("It is too late to move the visit: day %L1 after the treatment, the last that it may have, is over.").arg(aftercare::lastVisitDay)
               : QString();
}

QString CallBoard::visitProblem() const
{
    if (!m_asksVisit || !isVisitMovable() || visit() || m_visitDay.trimmed().isEmpty()) {
        return {};
    }
    if (!dayFrom(m_visitDay)) {
        return tr("Write it as year-month-day, for example 2029-06-30.");
    }
    if (!minuteFrom(m_visitTime) && !m_visitTime.trimmed().isEmpty()) {
        return tr("Write the time as hours and minutes, for example 10:30, or leave it empty.");
    }
    if (minuteFrom(m_visitTime) == 0) {
        return tr("Midnight stands for a day without a time. Leave the time empty if none is agreed.");
    }
    return rangeText();
}

QString CallBoard::visitShows() const
{
    const auto asked = visit();
    return asked ? tr("The phone shows from its next sync on: %1").arg(shownText(*asked, m_workplace.zone())) : QString();
}

}  // namespace ebbline::deskapp
