// The drafts, one for each patient: taken up, laid aside for another's, kept at every change, started over, undone.
#include "app/desk/model/treatment_editor.h"

#include "app/desk/model/begun.h"
#include "app/desk/model/times.h"
#include "app/desk/model/treatment_rows.h"
#include "app/desk/model/words.h"

#include <algorithm>
#include <utility>

namespace ebbline::deskapp {

namespace {

/// Whose treatment was in hand last.
const QString inHandPlace = QStringLiteral("treatment/patient");

}  // namespace

void TreatmentEditor::open()
{
    adoptFormer();
    takeUp(patientFromKey(begunWords(m_workplace, inHandPlace)));
    setStep(m_treatment.patient.isNull() ? 0 : 1);
}

bool TreatmentEditor::isBegun() const
{
    if (!m_workplace.isOpen()) {
        return false;
    }
    if (!begunWords(m_workplace, inHandPlace).isEmpty()) {
        return true;
    }
    const auto draft = m_workplace.desk().draft({});
    return draft || draft.error().reason != Reason::notFound;
}

/// An older program kept one draft for all, and beside it how its time was said.
void TreatmentEditor::adoptFormer()
{
    const auto adopted = m_workplace.desk().adoptFormerDraft();
    if (!adopted) {
        Q_EMIT m_workplace.failed(unreadText(adopted.error()));
        return;
    }
    if (*adopted) {
        const auto formerPlace = QStringLiteral("treatment/when");
        keepBegun(m_workplace, whenPlace(**adopted), begunWords(m_workplace, formerPlace));
        keepBegun(m_workplace, formerPlace, {});
        keepBegun(m_workplace, inHandPlace, keyOf(**adopted));
    }
}

QString TreatmentEditor::unreadText(const Error& why)
{
    return tr("What was begun here cannot be read. It stays as it is: what you write now is not kept as a draft. %1", "the reason").arg(errorText(why));
}

void TreatmentEditor::forget()
{
    m_treatment = {};
    m_book.load({});
    m_history.load({});
    m_plan.reset();
    m_correction.reset();
    m_weight.clear();
    m_otherwise.clear();
    m_when = WhenSaid::no;
    m_day.clear();
    m_time.clear();
    m_unread.clear();
    m_unkept = false;
    m_kept.clear();
    select(0);
}

void TreatmentEditor::layAside()
{
    if (!m_treatment.course.isNull() && !m_correction) {
        m_history.endTyping();
        m_aside.insert_or_assign(m_treatment.patient, Aside{std::exchange(m_history, {}), m_unkept});
    }
}

void TreatmentEditor::takeUp(const recovery::PatientId& patient)
{
    layAside();
    const auto found = m_aside.extract(patient);
    const auto aside = found ? std::optional(found.mapped()) : std::nullopt;
    const auto draft = m_workplace.desk().draft(patient);
    forget();
    m_treatment = m_workplace.desk().blankTreatment(patient);
    m_fromDraft = draft.has_value();
    if (!draft && draft.error().reason != Reason::notFound) {
        m_unread = unreadText(draft.error());
    }
    if (aside && aside->unkept) {
        m_treatment = aside->history.now();
    } else if (draft) {
        m_treatment = *draft;
    } else if (aside) {
        m_treatment.course = aside->history.now().course;
    }
    m_book.load(m_treatment.placements);
    openWhen();
    m_history.load(treatment());
    if (aside) {
        auto there = treatment();
        there.at = aside->history.now().at;
        if (there == aside->history.now()) {
            m_history = aside->history;
            m_history.setAt(m_treatment.at);
        }
    }
    m_plan = m_workplace.desk().plan(m_treatment.course);
    showNumbers();
    select(static_cast<int>(m_book.placements().size()));
    keepBegun(m_workplace, inHandPlace, patientKey());
    if (!m_unread.isEmpty()) {
        m_kept = m_unread;
        m_unkept = aside && aside->unkept;
        Q_EMIT m_workplace.failed(m_unread);
    } else if (aside && aside->unkept) {
        keep();
    }
    refreshPatients();
    refresh();
}

bool TreatmentEditor::isEmpty() const
{
    recovery::Treatment blank;
    blank.course = m_treatment.course;
    blank.patient = m_treatment.patient;
    blank.at = m_treatment.at;
    return m_when == WhenSaid::no && treatment() == blank;
}

/// A plan belongs to the course: an empty record with one beside it is a draft.
bool TreatmentEditor::isBlank() const
{
    return !m_plan && isEmpty();
}

void TreatmentEditor::keep()
{
    if (m_correction) {
        return keepCorrection();
    }
    if (!m_unread.isEmpty()) {
        m_unkept = true;
        m_kept = m_unread;
    } else {
        const bool blank = isBlank();
        const auto kept = blank ? m_workplace.desk().discardDraft(m_treatment.patient) : m_workplace.desk().keepDraft(treatment());
        m_unkept = !kept;
        m_kept = !kept ? errorText(kept.error()) : blank ? QString() : tr("Draft kept on this computer, %1").arg(clockText(m_workplace.now()));
    }
    refresh();
}

void TreatmentEditor::touched(TypedField field)
{
    m_history.take(treatment(), field);
    keep();
}

QList<RowList::Row> TreatmentEditor::begunRows() const
{
    if (!m_workplace.isOpen()) {
        return {};
    }
    const auto drafted = m_workplace.desk().drafted();
    if (!drafted) {
        return {};
    }
    std::vector<records::PatientRegistered> patients;
    for (const auto& patient : m_workplace.desk().patients()) {
        if (std::ranges::find(*drafted, patient.patient) != drafted->end()) {
            patients.push_back(patient);
        }
    }
    auto rows = patientRows(patients, {});
    if (std::ranges::find(*drafted, recovery::PatientId{}) != drafted->end()) {
        rows.prepend({QStringLiteral("nobody"), {}, QVariant::fromValue(PatientRow{{}, tr("Nobody chosen yet"), {}})});
    }
    return rows;
}

void TreatmentEditor::choosePatient(const QString& key)
{
    const auto patient = patientFromKey(key);
    if (m_workplace.isOpen() && !m_correction && !patient.isNull() && patient != m_treatment.patient) {
        treat(patient);
    }
}

void TreatmentEditor::takeUpBegun(const QString& key)
{
    const auto patient = patientFromKey(key);
    if (m_workplace.isOpen() && !m_correction && patient != m_treatment.patient) {
        takeUp(patient);
    }
}

void TreatmentEditor::treat(const recovery::PatientId& patient)
{
    if (m_treatment.patient.isNull() && !isBlank()) {
        const auto own = m_workplace.desk().draft(patient);
        const auto aside = m_aside.find(patient);
        if (!own && own.error().reason == Reason::notFound && (aside == m_aside.end() || !aside->second.unkept)) {
            return handTo(patient);
        }
    }
    takeUp(patient);
}

void TreatmentEditor::handTo(const recovery::PatientId& patient)
{
    auto hers = treatment();
    hers.patient = patient;
    // What cannot be read of before stays where it is.
    if (!m_workplace.settle(m_unread.isEmpty() ? m_workplace.desk().handDraft(hers) : m_workplace.desk().keepDraft(hers))) {
        return;
    }
    const auto when = m_when;
    forgetWhen();
    m_unread.clear();
    m_treatment.patient = patient;
    m_history.setPatient(patient);
    takeAt(m_treatment.at, when);
    keepBegun(m_workplace, inHandPlace, patientKey());
    keep();
}

void TreatmentEditor::startOver()
{
    if (!m_workplace.isOpen() || m_correction || isEmpty()) {
        return;
    }
    auto blank = m_workplace.desk().blankTreatment(m_treatment.patient);
    blank.course = m_treatment.course;
    m_history.takeWhole(blank, m_when);
    restore({blank, WhenSaid::no, true});
}

void TreatmentEditor::restore(const TreatmentHistory::Step& step)
{
    m_treatment = step.treatment;
    m_book.load(m_treatment.placements);
    if (m_correction) {
        showRecordedPlan();
    }
    showNumbers();
    if (step.whole) {
        takeAt(m_treatment.at, step.when);
        showAt();
    }
    select(std::min(m_selected, static_cast<int>(m_book.placements().size())));
    keep();
}

void TreatmentEditor::undo()
{
    if (m_workplace.isOpen() && canUndo()) {
        restore(m_history.undo(m_when));
    }
}

void TreatmentEditor::redo()
{
    if (m_workplace.isOpen() && canRedo()) {
        restore(m_history.redo(m_when));
    }
}

void TreatmentEditor::recordedHere(const recovery::PatientId& patient)
{
    forgetWhen();
    forget();
    m_aside.erase(patient);
    takeUp({});
    setStep(0);
}

}  // namespace ebbline::deskapp
