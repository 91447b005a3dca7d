// The follow-up that is agreed before the code is made: its day, and its time if there is one.
#include "app/desk/model/pairing_board.h"

#include "app/desk/model/times.h"

#include <QLocale>

namespace ebbline::deskapp {

void PairingBoard::proposeFollowUp()
{
    const auto chosen = static_cast<std::size_t>(m_protocol);
    const auto plan = chosen < m_protocols.size() ? m_protocols[chosen].carePlan : aftercare::CarePlan{};
    m_followUp = dayField(m_treated.day() + std::chrono::days(plan.followUpDay));
}

void PairingBoard::setFollowUp(const QString& date)
{
    if (date != m_followUp) {
        m_followUp = date;
        m_followUpTyped = true;
        Q_EMIT changed();
    }
}

void PairingBoard::setFollowUpTime(const QString& time)
{
    if (time != m_followUpTime) {
        m_followUpTime = time;
        Q_EMIT changed();
    }
}

std::optional<aftercare::Visit> PairingBoard::visit() const
{
    const auto day = dayFrom(m_followUp);
    const auto minute = minuteFrom(m_followUpTime);
    if (!day || (!minute && !m_followUpTime.trimmed().isEmpty())) {
        return std::nullopt;
    }
    const aftercare::Visit visit{*day, minute};
    return aftercare::check(visit, m_treated) ? std::optional(visit) : std::nullopt;
}

QString PairingBoard::followUpProblem() const
{
    if (m_course.isNull() || visit()) {
        return {};
    }
    const auto day = dayFrom(m_followUp);
    if (!day) {
        return tr("Write it as year-month-day, for example 2029-06-30.");
    }
    if (aftercare::check({*day, std::nullopt}, m_treated)) {
        return tr("Write the time of the follow-up as hours and minutes, for example 10:30, or leave it empty.");
    }
    const auto dayText = [this](int days) {
        return QLocale().toString(dateOf(m_treated.day() + std::chrono::days(days)), QLocale::LongFormat);
    };
    return tr("The follow-up must be 1 to 60 days after the treatment. Choose a day from %1 to %2.", "date, date")
        .arg(dayText(aftercare::firstVisitDay), dayText(aftercare::lastVisitDay));
}

QString PairingBoard::followUpText() const
{
    const auto visit = this->visit();
    if (!visit) {
        return {};
    }
    const auto date = QLocale().toString(dateOf(visit->day), QLocale::LongFormat);
    return visit->minute ? tr("The phone shows: %1, %2", "date, time")
                               .arg(date, clockText(aftercare::momentOf(*visit, m_workplace.zone())))
                         : tr("The phone shows: %1, without a time", "date").arg(date);
}

}  // namespace ebbline::deskapp
