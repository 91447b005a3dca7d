// When the treatment was. A draft may be begun days before, as a plan; the course counts its days from what stands here.
#include "app/desk/model/treatment_editor.h"

#include "app/desk/model/begun.h"
#include "app/desk/model/times.h"

#include <QLocale>

namespace ebbline::deskapp {

namespace {

/// An older treatment is asked about once more: our choice, no source. A record is usually written on the day; a week
/// leaves room for one that was written on paper first.
constexpr int daysUnasked = 7;

int daysAgo(const clock::Moment& at, const clock::Moment& now)
{
    return static_cast<int>((now.day() - at.day()).count());
}

}  // namespace

QString TreatmentEditor::whenPlace(const recovery::PatientId& patient)
{
    return QStringLiteral("treatment/when/") + (patient.isNull() ? QStringLiteral("nobody") : keyOf(patient));
}

void TreatmentEditor::openWhen()
{
    const auto kept = begunWords(m_workplace, whenPlace(m_treatment.patient));
    m_when = kept == QLatin1String("confirmed") ? WhenSaid::confirmed : kept == QLatin1String("said") ? WhenSaid::said : WhenSaid::no;
    showAt();
}

void TreatmentEditor::forgetWhen()
{
    keepBegun(m_workplace, whenPlace(m_treatment.patient), {});
    m_when = WhenSaid::no;
}

void TreatmentEditor::showAt()
{
    m_day = dayField(m_treatment.at.day());
    m_time = timeField(m_treatment.at.minuteOfDay());
}

void TreatmentEditor::takeAt(const clock::Moment& at, WhenSaid when)
{
    m_when = when;
    m_treatment.at = at;
    m_history.setAt(at);
    if (m_correction) {
        return;
    }
    keepBegun(m_workplace, whenPlace(m_treatment.patient),
              when == WhenSaid::confirmed ? QStringLiteral("confirmed") : when == WhenSaid::said ? QStringLiteral("said") : QString());
}

void TreatmentEditor::renewAt()
{
    // What was typed and is no day, or no time, stays to be mended.
    if (m_workplace.isOpen() && m_when == WhenSaid::no && dayFrom(m_day) && minuteFrom(m_time) && daysAgo(m_treatment.at, m_workplace.now()) == 0) {
        m_treatment.at = m_workplace.now();
        m_history.setAt(m_treatment.at);
        showAt();
    }
}

void TreatmentEditor::takeNow()
{
    if (m_workplace.isOpen()) {
        takeAt(m_workplace.now(), WhenSaid::no);
        showAt();
        keep();
    }
}

void TreatmentEditor::confirmWhen()
{
    if (m_workplace.isOpen() && whenProblem().isEmpty()) {
        takeAt(m_treatment.at, WhenSaid::confirmed);
        keep();
    }
}

void TreatmentEditor::takeTyped()
{
    const auto day = dayFrom(m_day);
    const auto minute = minuteFrom(m_time);
    if (m_workplace.isOpen() && day && minute) {
        takeAt(m_workplace.zone().moment(m_workplace.zone().instantOf(*day, std::chrono::minutes(*minute))), WhenSaid::said);
        keep();
    } else {
        Q_EMIT changed();
    }
}

void TreatmentEditor::setDay(const QString& day)
{
    if (day != m_day) {
        m_day = day;
        takeTyped();
    }
}

void TreatmentEditor::setTime(const QString& time)
{
    if (time != m_time) {
        m_time = time;
        takeTyped();
    }
}

QString TreatmentEditor::whenProblem() const
{
    if (!m_workplace.isOpen()) {
        return {};
    }
    if (!dayFrom(m_day)) {
        return tr("Write the day of the treatment as year-month-day, for example 2029-06-30.");
    }
    if (!minuteFrom(m_time)) {
        return tr("Write the time of the treatment as hours and minutes, for example 14:05.");
    }
    return m_treatment.at.at > m_workplace.now().at ? tr("This time is still to come. Write when the treatment was.") : QString();
}

QString TreatmentEditor::whenQuestion() const
{
    if (!m_workplace.isOpen() || m_when == WhenSaid::confirmed || !whenProblem().isEmpty()) {
        return {};
    }
    const int days = daysAgo(m_treatment.at, m_workplace.now());
    if (m_when == WhenSaid::no && days != 0) {
        return tr("This record was begun on %1. Say when the treatment was.").arg(dateText(m_treatment.at));
    }
    return days > daysUnasked ? tr("The treatment was %Ln day(s) ago. Say whether that is right.", nullptr, days) : QString();
}

}  // namespace ebbline::deskapp
