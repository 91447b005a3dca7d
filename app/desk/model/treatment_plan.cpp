// The plan kept beside what is done, the twin on the other side, and the code on a pack.

#include "app/desk/model/treatment_editor.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/plan_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/treatment_rows.h"

#include <QDate>

#include <algorithm>
#include <utility>

namespace ebbline::deskapp {

namespace {

/// The thread with what the code says; what it does not say stays.
recovery::Placement withPack(recovery::Placement placement, const exchange::PackCode& code)
{
    if (code.lot) {
        // A lot is one product's: what was known of another one says nothing of it.
        placement.lot = *code.lot;
        placement.article = code.article;
    } else if (code.article && !placement.lot.empty()) {
        placement.article = code.article;
    }
    if (code.expiry) {
        const QDate day(static_cast<int>(code.expiry->year()), static_cast<int>(static_cast<unsigned>(code.expiry->month())),
                        static_cast<int>(static_cast<unsigned>(code.expiry->day())));
        placement.expiry = day.toString(Qt::ISODate).toStdString();
    }
    return placement;
}

}  // namespace

void TreatmentEditor::keepAsPlan()
{
    if (m_workplace.isOpen() && !m_correction && !m_book.placements().empty() && m_workplace.settle(m_workplace.desk().keepPlan(treatment()))) {
        m_plan = treatment();
        Q_EMIT changed();
    }
}

void TreatmentEditor::dropPlan()
{
    if (m_correction) {
        m_treatment.planned.clear();
        m_plan.reset();
        touched();
        return;
    }
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
    return m_plan ? planSentence(m_plan->placements, m_book.placements()) : QString();
}

void TreatmentEditor::mirrorSelected()
{
    const int there = m_book.twinOf(m_selected);
    if (there < 1) {
        placed(m_book.mirror(m_selected));
        return;
    }
    select(there);
    m_view = current().view;
    m_mirrorSaid = tr("Nothing was drawn: thread %1 lies there already. It is chosen now.", "its number").arg(charts::digits(there));
    Q_EMIT changed();
}

void TreatmentEditor::select(int number)
{
    m_selected = number;
    m_history.endTyping();
    forgetPack();
}

void TreatmentEditor::forgetPack()
{
    m_packProblem.clear();
    m_packReadings.clear();
    m_mirrorSaid.clear();
    m_solutionSaid.clear();
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
