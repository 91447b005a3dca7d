#include "app/desk/model/treatment_editor.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/begun.h"
#include "app/desk/model/times.h"
#include "app/desk/model/treatment_rows.h"
#include "app/desk/model/words.h"
#include "app/face/placement_hint.h"

#include <QDate>
#include <QLocale>

#include <algorithm>
#include <cmath>
#include <utility>

namespace ebbline::deskapp {

namespace {

const recovery::Placement blankPlacement;

recovery::ChartPoint pointOf(const QPointF& point)
{
    return face::clampedToChart(point.x(), point.y());
}

/// A number in the unit and form of the core; a field that holds nothing sensible keeps the old.
template <typename Enum>
Enum within(int value, Enum first, Enum last)
{
    return static_cast<Enum>(std::clamp(value, static_cast<int>(first), static_cast<int>(last)));
}

}  // namespace

TreatmentEditor::TreatmentEditor(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::changed, this, &TreatmentEditor::refreshPatients);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        if (!m_workplace.isOpen()) {
            forget();
            m_aside.clear();
            m_patientSearch.clear();
            m_patients.setRows({});
            refresh();
        }
    });
}

void TreatmentEditor::setStep(int step)
{
    const int next = std::clamp(step, 0, 3);
    if (next != m_step) {
        m_step = next;
        m_history.endTyping();
        if (m_step == 3) {
            renewAt();
            Q_EMIT changed();
        }
        Q_EMIT stepChanged();
    }
}

QStringList TreatmentEditor::steps() const
{
    return {isCorrection() ? tr("Reason") : tr("Patient"), tr("Threads"), tr("Anaesthetic"), tr("Care and consent")};
}

recovery::Treatment TreatmentEditor::treatment() const
{
    auto treatment = m_treatment;
    treatment.placements = m_book.placements();
    return treatment;
}

void TreatmentEditor::refresh()
{
    m_dose = doseWords(treatment(), m_workplace.isOpen() ? m_workplace.desk().doseLimits() : anaesthesia::Limits{});
    if (auto problem = otherwiseProblem(); !problem.isEmpty()) {
        // A sum that leaves out what was typed would be too low.
        m_dose = {};
        m_dose.problem = std::move(problem);
    }
    m_placementRows.setRows(placementRows(m_book.placements()));
    m_baselineRows.setRows(baselineRows(m_treatment.baseline));
    m_begun.setRows(begunRows());
    Q_EMIT changed();
}

void TreatmentEditor::refreshPatients()
{
    if (m_workplace.isOpen()) {
        m_patients.setRows(patientRows(m_workplace.desk().patients(), m_patientSearch));
        m_begun.setRows(begunRows());
        if (m_correction) {
            Q_EMIT changed();  // a colleague may have corrected it
        }
    }
}

void TreatmentEditor::setPatientSearch(const QString& text)
{
    if (text != m_patientSearch) {
        m_patientSearch = text;
        refreshPatients();
        Q_EMIT changed();
    }
}

QString TreatmentEditor::patientName() const
{
    if (!m_workplace.isOpen() || m_treatment.patient.isNull()) {
        return {};
    }
    const auto& patients = m_workplace.state().patients;
    const auto found = patients.find(m_treatment.patient);
    return found == patients.end() ? QString() : QString::fromStdString(found->second.name);
}

QString TreatmentEditor::when() const
{
    return m_workplace.isOpen() ? whenText(m_treatment.at, m_workplace.now()) : QString();
}

QString TreatmentEditor::begunOf(const QString& field) const
{
    return begunWords(m_workplace, QStringLiteral("newPatient/") + field);
}

void TreatmentEditor::keepOf(const QString& field, const QString& text)
{
    keepBegun(m_workplace, QStringLiteral("newPatient/") + field, text);
}

QStringList TreatmentEditor::diaryLanguageNames() const
{
    QStringList names;
    for (const auto& code : diaryLanguages()) {
        names << languageName(code);
    }
    return names;
}

/// The desk's own.
int TreatmentEditor::likelyDiaryLanguage() const
{
    return static_cast<int>(diaryLanguages().indexOf(nearestLanguage(QLocale().name(), diaryLanguages())));
}

bool TreatmentEditor::registerPatient(const QString& name, const QString& phone, int language)
{
    const auto code = diaryLanguages().value(language);
    if (m_correction || name.trimmed().isEmpty() || code.isEmpty()) {
        return false;
    }
    const auto made = m_workplace.desk().registerPatient(name.trimmed().toStdString(), phone.trimmed().toStdString(),
                                                         QString(code).replace(u'_', u'-').toStdString());
    if (!m_workplace.settle(made ? Done() : fail(made.error()))) {
        return false;
    }
    keepOf(QStringLiteral("name"), {});
    keepOf(QStringLiteral("phone"), {});
    treat(*made);
    return true;
}

void TreatmentEditor::setView(int view)
{
    const auto next = within(view, recovery::ChartView::front, recovery::ChartView::rightOblique);
    if (next != m_view) {
        m_view = next;
        Q_EMIT changed();
    }
}

QList<face::Track> TreatmentEditor::tracks() const
{
    return tracksOf(m_book.placements());
}

const recovery::Placement& TreatmentEditor::current() const
{
    const auto& all = m_book.placements();
    return m_selected >= 1 && static_cast<std::size_t>(m_selected) <= all.size() ? all[static_cast<std::size_t>(m_selected - 1)]
                                                                                 : blankPlacement;
}

void TreatmentEditor::changeCurrent(const recovery::Placement& placement, TypedField field)
{
    if (m_selected > 0 && placement != current()) {
        m_book.change(m_selected, placement);
        touched(field);
    }
}

void TreatmentEditor::placed(int number)
{
    if (number > 0) {
        select(number);
        m_view = current().view;
        touched();
    }
}

QString TreatmentEditor::caution() const
{
    return m_selected > 0 ? cautionText(current()) : QString();
}

QString TreatmentEditor::drawnOtherwise() const
{
    return m_selected > 0 ? drawnOtherwiseText(current()) : QString();
}

void TreatmentEditor::draw(QPointF entry, QPointF end)
{
    placed(m_book.draw(m_view, pointOf(entry), pointOf(end)));
}

void TreatmentEditor::move(int number, QPointF entry, QPointF end)
{
    select(number);
    m_book.move(number, pointOf(entry), pointOf(end));
    touched();
}

void TreatmentEditor::choose(int number)
{
    const int next = std::clamp(number, 0, static_cast<int>(m_book.placements().size()));
    if (next != m_selected) {
        select(next);
        if (next > 0) {
            m_view = current().view;
        }
        Q_EMIT changed();
    }
}

void TreatmentEditor::removeSelected()
{
    if (m_selected > 0) {
        m_book.remove(m_selected);
        select(std::min(m_selected, static_cast<int>(m_book.placements().size())));
        touched();
    }
}

void TreatmentEditor::duplicateSelected()
{
    placed(m_book.duplicate(m_selected));
}

void TreatmentEditor::mirrorAll()
{
    if (m_book.mirrorAll() > 0) {
        touched();
    }
}

void TreatmentEditor::setBaseline(int symptom, int side, int points)
{
    const recovery::Stream stream{within(symptom, recovery::allSymptoms.front(), recovery::allSymptoms.back()),
                                  side == static_cast<int>(recovery::Side::right) ? recovery::Side::right : recovery::Side::left};
    if (const auto score = recovery::Score::of(points)) {
        m_treatment.baseline.insert_or_assign(stream, *score);
    } else {
        m_treatment.baseline.erase(stream);
    }
    touched();
}

QStringList TreatmentEditor::missing() const
{
    QStringList missing = m_correction ? missingOfCorrection() : QStringList();
    if (m_treatment.patient.isNull()) {
        missing << tr("Choose or register the patient.");
    }
    if (m_book.placements().empty()) {
        missing << tr("Draw at least one thread.");
    }
    // A correction may say that it was not.
    if (!m_correction && !m_treatment.consentGiven) {
        missing << tr("Note that consent was given.");
    }
    if (!m_correction && !m_treatment.cautionsGiven) {
        missing << tr("Note that the cautions were explained.");
    }
    if (const auto when = whenProblem().isEmpty() ? whenQuestion() : whenProblem(); !when.isEmpty()) {
        missing << when;
    }
    if (!m_dose.problem.isEmpty()) {
        missing << m_dose.problem;
    }
    if (!m_weight.trimmed().isEmpty() && !m_treatment.weightKg) {
        missing << tr("The weight is not a number of kilograms.");
    }
    const auto& all = m_book.placements();
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].redone && QString::fromStdString(all[i].redone->reason).trimmed().isEmpty()) {
            missing << tr("Thread %L1 was redone: say why.").arg(static_cast<int>(i) + 1);
        }
    }
    if (missing.isEmpty()) {
        if (const auto checked = recovery::check(treatment()); !checked) {
            missing << errorText(checked.error());
        }
    }
    return missing;
}

void TreatmentEditor::save()
{
    if (!m_workplace.isOpen()) {
        return;
    }
    renewAt();
    if (!missing().isEmpty()) {
        Q_EMIT changed();
        return;
    }
    if (m_correction) {
        return recordCorrection();
    }
    const auto treatment = this->treatment();
    if (m_workplace.mayDo(records::Task::treat) && m_workplace.settle(m_workplace.desk().recordTreatment(treatment))) {
        recordedHere(treatment.patient);
        Q_EMIT recorded(keyOf(treatment.course));
    }
}

}  // namespace ebbline::deskapp
