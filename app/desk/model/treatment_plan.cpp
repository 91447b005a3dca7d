// Undo over the whole record, the plan kept beside what is done, and the code on a pack.

#include "app/desk/model/treatment_editor.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/treatment_rows.h"

#include <QDate>
#include <QLocale>

#include <algorithm>
#include <cmath>
#include <utility>

namespace ebbline::deskapp {

namespace {

constexpr double moved = 6;  ///< units of the chart's frame: less is a hand that shakes

double apart(const recovery::ChartPoint& a, const recovery::ChartPoint& b)
{
    return std::hypot(a.x - b.x, a.y - b.y);
}

/// The thread with what the code says; what it does not say stays.
recovery::Placement withPack(recovery::Placement placement, const exchange::PackCode& code)
{
    if (code.lot) {
        placement.lot = *code.lot;
    }
    if (code.expiry) {
        const QDate day(static_cast<int>(code.expiry->year()), static_cast<int>(static_cast<unsigned>(code.expiry->month())),
                        static_cast<int>(static_cast<unsigned>(code.expiry->day())));
        placement.expiry = day.toString(Qt::ISODate).toStdString();
    }
    return placement;
}

}  // namespace

void TreatmentEditor::restore(const recovery::Treatment& treatment)
{
    // Whose it is and when it was are chosen apart and stay.
    const auto patient = m_treatment.patient;
    const auto at = m_treatment.at;
    m_treatment = treatment;
    m_treatment.patient = patient;
    m_treatment.at = at;
    m_book.load(m_treatment.placements);
    showNumbers();
    select(std::min(m_selected, static_cast<int>(m_book.placements().size())));
    m_last = this->treatment();
    touched();
}

void TreatmentEditor::undo()
{
    if (canUndo()) {
        m_after.push_back(m_last);
        const auto former = m_before.back();
        m_before.pop_back();
        restore(former);
    }
}

void TreatmentEditor::redo()
{
    if (canRedo()) {
        m_before.push_back(m_last);
        const auto next = m_after.back();
        m_after.pop_back();
        restore(next);
    }
}

void TreatmentEditor::keepAsPlan()
{
    if (m_workplace.isOpen() && !m_book.placements().empty() && m_workplace.settle(m_workplace.desk().keepPlan(treatment()))) {
        m_plan = treatment();
        Q_EMIT changed();
    }
}

void TreatmentEditor::dropPlan()
{
    if (m_workplace.isOpen() && m_plan && m_workplace.settle(m_workplace.desk().discardPlan(m_treatment.course))) {
        m_plan.reset();
        Q_EMIT changed();
    }
}

QList<face::Track> TreatmentEditor::planTracks() const
{
    return m_plan ? tracksOf(m_plan->placements) : QList<face::Track>();
}

QString TreatmentEditor::planText() const
{
    if (!m_plan) {
        return {};
    }
    const auto& planned = m_plan->placements;
    const auto& done = m_book.placements();
    QStringList changed;
    for (std::size_t i = 0; i < std::min(planned.size(), done.size()); ++i) {
        const bool elsewhere = planned[i].view != done[i].view || apart(planned[i].entry, done[i].entry) > moved || apart(planned[i].end, done[i].end) > moved;
        auto thread = done[i];
        thread.view = planned[i].view;
        thread.entry = planned[i].entry;
        thread.end = planned[i].end;
        thread.anaestheticMl = planned[i].anaestheticMl;
        if (elsewhere || thread != planned[i]) {
            changed << charts::digits(static_cast<int>(i) + 1);
        }
    }
    auto text = tr("Planned: %1. Now: %2.", "threads, threads")
                    .arg(charts::digits(static_cast<int>(planned.size())), charts::digits(static_cast<int>(done.size())));
    if (!changed.isEmpty()) {
        text += QLatin1Char(' ') + tr("Otherwise than planned: %1.", "numbers of threads").arg(QLocale().createSeparatedList(changed));
    } else if (planned.size() == done.size()) {
        text += QLatin1Char(' ') + tr("As planned.");
    }
    return text;
}

void TreatmentEditor::select(int number)
{
    m_selected = number;
    forgetPack();
}

void TreatmentEditor::forgetPack()
{
    m_packProblem.clear();
    m_packReadings.clear();
}

void TreatmentEditor::takePack(const exchange::PackCode& code)
{
    const auto placement = withPack(current(), code);
    forgetPack();
    changeCurrent(placement);
}

QStringList TreatmentEditor::packReadings() const
{
    QStringList readings;
    for (const auto& reading : m_packReadings) {
        readings << lotText(withPack({}, reading));
    }
    return readings;
}

void TreatmentEditor::takePackReading(int index)
{
    if (index >= 0 && static_cast<std::size_t>(index) < m_packReadings.size() && m_selected > 0) {
        takePack(exchange::PackCode(m_packReadings[static_cast<std::size_t>(index)]));
        Q_EMIT changed();
    }
}

bool TreatmentEditor::takePackCode(const QString& text)
{
    forgetPack();
    const auto plain = text.trimmed().toStdString();
    if (plain.empty() || !m_workplace.isOpen()) {
        Q_EMIT changed();
        return false;
    }
    const auto codes = exchange::readingsOf(plain, std::chrono::year{dateOf(m_workplace.now()).year()});
    if (!codes) {
        m_packProblem = tr("This is no code of a pack that can be read. Nothing was taken from it: scan it again, or type lot and expiry below.");
    } else if (m_selected < 1) {
        m_packProblem = tr("Draw or choose a thread first.");
    } else if (codes->size() > 1) {
        m_packReadings = *codes;
        m_packProblem = tr("The code does not say where the lot ends. Look at the pack and choose what stands there, or type it below.");
    } else if (!codes->front().lot && !codes->front().expiry) {
        m_packProblem = tr("The code names no lot and no expiry: type them below.");
    } else {
        takePack(codes->front());
    }
    Q_EMIT changed();
    return m_packProblem.isEmpty();
}

}  // namespace ebbline::deskapp
