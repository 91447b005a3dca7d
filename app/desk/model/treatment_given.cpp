// What the chosen thread was brought in with, and where the anaesthetic given for it held epinephrine.
#include "app/desk/model/treatment_editor.h"
#include "app/desk/model/treatment_rows.h"

#include <algorithm>

namespace ebbline::deskapp {

using recovery::EpinephrineAt;
using recovery::Instrument;

QStringList TreatmentEditor::instrumentNames() const
{
    return {tr("Not said"), instrumentName(Instrument::sharpNeedle), instrumentName(Instrument::bluntCannula)};
}

int TreatmentEditor::instrument() const
{
    return current().instrument ? static_cast<int>(*current().instrument) : 0;
}

void TreatmentEditor::setInstrument(int instrument)
{
    auto placement = current();
    placement.instrument.reset();
    if (instrument == static_cast<int>(Instrument::sharpNeedle) || instrument == static_cast<int>(Instrument::bluntCannula)) {
        placement.instrument = static_cast<Instrument>(instrument);
    }
    changeCurrent(placement);
}

void TreatmentEditor::setInstrumentLengthMm(int length)
{
    auto placement = current();
    placement.instrumentLengthMm = length > 0 ? std::optional(std::clamp(length, 10, 500)) : std::nullopt;
    changeCurrent(placement);
}

QStringList TreatmentEditor::epinephrineNames() const
{
    return {tr("Not said"), tr("None"), tr("At the entry point"), tr("Along the track"), tr("At entry point and along the track")};
}

int TreatmentEditor::epinephrine() const
{
    return current().epinephrineAt ? static_cast<int>(*current().epinephrineAt) : 0;
}

void TreatmentEditor::setEpinephrine(int at)
{
    if (m_selected > 0) {
        const auto place = static_cast<std::size_t>(m_selected);
        placeEpinephrine(place - 1, place, at);
    }
}

int TreatmentEditor::epinephrineOfAll() const
{
    const auto& all = m_book.placements();
    if (all.empty()) {
        return 0;
    }
    const auto& first = all.front().epinephrineAt;
    const bool alike = std::ranges::all_of(all, [&](const recovery::Placement& placement) { return placement.epinephrineAt == first; });
    return !alike ? -1 : first ? static_cast<int>(*first) : 0;
}

void TreatmentEditor::setEpinephrineOfAll(int at)
{
    placeEpinephrine(0, m_book.placements().size(), at);
}

/// One step of undo, also where the solution goes with it.
void TreatmentEditor::placeEpinephrine(std::size_t first, std::size_t end, int at)
{
    std::optional<EpinephrineAt> where;
    if (at >= static_cast<int>(EpinephrineAt::nowhere) && at <= static_cast<int>(EpinephrineAt::both)) {
        where = static_cast<EpinephrineAt>(at);
    }
    for (std::size_t i = first; i < end; ++i) {
        auto placement = m_book.placements()[i];
        placement.epinephrineAt = where;
        m_book.change(static_cast<int>(i) + 1, placement);
    }
    if (where && *where != EpinephrineAt::nowhere && m_treatment.anaesthetic.drug == recovery::Drug::lidocaine) {
        takeDrug(recovery::Drug::lidocaineWithEpinephrine);
        m_solutionSaid = tr("The solution is now with epinephrine %1: check it under Anaesthetic.", "dilution").arg(ratioText(m_treatment.anaesthetic.epinephrineOneIn));
    }
    if (treatment() != m_history.now()) {
        touched();
    }
}

void TreatmentEditor::takeDrug(recovery::Drug drug)
{
    m_solutionSaid.clear();
    m_treatment.anaesthetic.drug = drug;
    m_treatment.anaesthetic.epinephrineOneIn = drug == recovery::Drug::lidocaineWithEpinephrine ? 200'000 : 0;
}

}  // namespace ebbline::deskapp
