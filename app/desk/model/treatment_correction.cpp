// A record that is corrected: a draft of its own, opened from the page of its course, beside the drafts of new treatments.
#include "app/desk/model/treatment_editor.h"

#include "app/desk/model/correction_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"

#include <utility>

namespace ebbline::deskapp {

bool TreatmentEditor::openCorrection(const QString& course)
{
    if (!m_workplace.isOpen()) {
        return false;
    }
    const auto id = courseFromKey(course);
    const auto record = m_workplace.desk().beginCorrection(id);
    if (!record) {
        return false;
    }
    layAside();
    forget();
    const auto draft = m_workplace.desk().correction(id);
    m_fromDraft = draft.has_value();
    m_correction = draft ? *draft : *record;
    m_treatment = m_correction->treatment;
    m_book.load(m_treatment.placements);
    m_when = m_treatment.at == record->treatment.at ? WhenSaid::confirmed : WhenSaid::said;
    showAt();
    m_history.load(treatment());
    showRecordedPlan();
    showNumbers();
    if (!draft && draft.error().reason != Reason::notFound) {
        m_unread = unreadText(draft.error());
        m_kept = m_unread;
        Q_EMIT m_workplace.failed(m_unread);
    }
    refreshPatients();
    refresh();
    m_step = 0;
    Q_EMIT stepChanged();
    return true;
}

void TreatmentEditor::showRecordedPlan()
{
    m_plan.reset();
    if (!m_treatment.planned.empty()) {
        m_plan = m_treatment;
        m_plan->placements = m_treatment.planned;
    }
}

const journal::CourseState* TreatmentEditor::corrected() const
{
    if (!m_correction || !m_workplace.isOpen()) {
        return nullptr;
    }
    const auto& courses = m_workplace.state().courses;
    const auto found = courses.find(m_correction->treatment.course);
    return found == courses.end() || found->second.treatmentVersions.empty() ? nullptr : &found->second;
}

recovery::CourseId TreatmentEditor::correcting() const
{
    return m_correction ? m_correction->treatment.course : recovery::CourseId{};
}

QString TreatmentEditor::reason() const
{
    return m_treatment.corrected ? QString::fromStdString(m_treatment.corrected->reason) : QString();
}

void TreatmentEditor::setReason(const QString& reason)
{
    if (m_correction && reason != this->reason()) {
        if (!m_treatment.corrected) {
            m_treatment.corrected = recovery::Correction{};
        }
        m_treatment.corrected->reason = reason.toStdString();
        touched(TypedField::reason);
    }
}

QStringList TreatmentEditor::corrections() const
{
    const auto* course = corrected();
    return course != nullptr ? changeLines(course->treatment->treatment, treatment()) : QStringList();
}

QString TreatmentEditor::correctionNews() const
{
    const auto* course = corrected();
    return course != nullptr && course->treatmentVersions.back().operation != m_correction->seen
               ? tr("A colleague corrected this record meanwhile. What you record holds as a whole, in place of hers: below stands what it would change.")
               : QString();
}

void TreatmentEditor::seeNews()
{
    const auto* course = corrected();
    if (course == nullptr || correctionNews().isEmpty()) {
        return;
    }
    if (auto& begun = m_correction->treatment.corrected) {
        begun->inSight = static_cast<std::uint32_t>(course->treatmentVersions.size());
    }
    m_correction->seen = course->treatmentVersions.back().operation;
    keepCorrection();
}

QString TreatmentEditor::phoneKeeps() const
{
    const auto* course = corrected();
    return course != nullptr ? phoneKeepsText(*course, treatment()) : QString();
}

QStringList TreatmentEditor::missingOfCorrection() const
{
    QStringList missing;
    if (reason().trimmed().isEmpty()) {
        missing << tr("Say why it is corrected.");
    }
    const auto* course = corrected();
    if (corrections().isEmpty() && (course == nullptr || !course->isCountedOtherwise())) {
        missing << tr("Nothing is changed yet.");
    }
    return missing;
}

/// What was in sight goes back with no undo.
void TreatmentEditor::takeWritten()
{
    const auto begun = m_correction->treatment.corrected;
    m_correction->treatment = treatment();
    if (auto& written = m_correction->treatment.corrected; written && begun) {
        written->inSight = begun->inSight;
    }
}

void TreatmentEditor::keepCorrection()
{
    takeWritten();
    if (!m_unread.isEmpty()) {
        m_kept = m_unread;
    } else {
        const auto* course = corrected();
        const bool blank = corrections().isEmpty() && reason().isEmpty() && (course == nullptr || !course->isCountedOtherwise());
        auto& desk = m_workplace.desk();
        const auto kept = blank ? desk.discardCorrection(correcting()) : desk.keepCorrection(*m_correction);
        m_kept = !kept ? errorText(kept.error()) : blank ? QString() : tr("Draft kept on this computer, %1").arg(clockText(m_workplace.now()));
    }
    refresh();
}

void TreatmentEditor::recordCorrection()
{
    takeWritten();
    if (m_workplace.mayDo(records::Task::treat) && m_workplace.settle(m_workplace.desk().correctTreatment(*m_correction))) {
        endCorrection();
    }
}

void TreatmentEditor::dropCorrection()
{
    if (m_correction && m_workplace.isOpen() && (!m_unread.isEmpty() || m_workplace.settle(m_workplace.desk().discardCorrection(correcting())))) {
        endCorrection();
    }
}

void TreatmentEditor::endCorrection()
{
    const auto course = keyOf(correcting());
    forget();
    refresh();
    Q_EMIT correctionEnded(course);
}

}  // namespace ebbline::deskapp
