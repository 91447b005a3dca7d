// Who placed the threads, and what was redone in the same session, with its reason.
#include "app/desk/model/treatment_editor.h"
#include "app/desk/model/treatment_rows.h"

#include <algorithm>

namespace ebbline::deskapp {

QStringList TreatmentEditor::redoneNames() const
{
    return {tr("Placed once"), redoingName(recovery::Redoing::replaced), redoingName(recovery::Redoing::added)};
}

int TreatmentEditor::redone() const
{
    return current().redone ? static_cast<int>(current().redone->how) : 0;
}

void TreatmentEditor::setRedone(int how)
{
    auto placement = current();
    if (how == static_cast<int>(recovery::Redoing::replaced) || how == static_cast<int>(recovery::Redoing::added)) {
        placement.redone = recovery::Redone{static_cast<recovery::Redoing>(how),
                                            placement.redone ? placement.redone->reason : std::string()};
    } else {
        placement.redone.reset();
    }
    changeCurrent(placement);
}

QString TreatmentEditor::redoneReason() const
{
    return current().redone ? QString::fromStdString(current().redone->reason) : QString();
}

void TreatmentEditor::setRedoneReason(const QString& reason)
{
    auto placement = current();
    if (placement.redone) {
        placement.redone->reason = reason.toStdString();
        changeCurrent(placement, TypedField::redoneReason);
    }
}

QString TreatmentEditor::redoneProblem() const
{
    if (!current().redone) {
        return {};
    }
    return redoneReason().trimmed().isEmpty() ? tr("Say why it was redone.")
           : !recovery::check(current())      ? tr("Shorten the reason.")
                                              : QString();
}

QStringList TreatmentEditor::placedByNames() const
{
    QStringList names{tr("Not written down")};
    if (m_workplace.isOpen()) {
        if (const auto clinic = m_workplace.desk().clinic()) {
            for (const auto& person : clinic->people) {
                names << QString::fromStdString(person);
            }
        }
    }
    const auto there = QString::fromStdString(m_treatment.placedBy);
    if (!there.isEmpty() && names.indexOf(there, 1) < 0) {
        names << there;
    }
    return names;
}

int TreatmentEditor::placedBy() const
{
    return m_treatment.placedBy.empty() ? 0 : static_cast<int>(placedByNames().indexOf(QString::fromStdString(m_treatment.placedBy), 1));
}

void TreatmentEditor::setPlacedBy(int index)
{
    const auto names = placedByNames();
    if (index < 0 || index >= names.size()) {
        return;
    }
    const auto name = index == 0 ? std::string() : names[index].toStdString();
    if (name != m_treatment.placedBy) {
        m_treatment.placedBy = name;
        touched();
    }
}

}  // namespace ebbline::deskapp
