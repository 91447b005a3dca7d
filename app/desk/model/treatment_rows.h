#pragma once
/// \file
/// The lists of a treatment in words, shared by the editor and the follow-up sheet.

#include "app/desk/model/row_list.h"
#include "app/face/face_paint.h"
#include "core/records/bodies.h"

#include <QStringList>

#include <utility>

namespace ebbline::deskapp {

struct PlacementRow;

QList<RowList::Row> patientRows(const std::vector<records::PatientRegistered>& patients, const QString& search);
QList<RowList::Row> placementRows(const std::vector<recovery::Placement>& placements);
/// "0.4 mL", with where it had epinephrine if that is said.
QString givenText(const PlacementRow& row);
QList<RowList::Row> baselineRows(const recovery::Scores& baseline);
QList<face::Track> tracksOf(const std::vector<recovery::Placement>& placements);

/// "PDO, barbed two ways, 19 G, 100 mm".
QString threadText(const recovery::Placement& placement);
/// "Sharp needle", "Blunt cannula".
QString instrumentName(recovery::Instrument instrument);
/// "Blunt cannula, 90 mm"; empty if nothing is said of it.
QString instrumentText(const recovery::Placement& placement);
/// "epinephrine at the entry point", "no epinephrine"; empty if it is not said.
QString epinephrineText(const recovery::Placement& placement);
/// "lot AB-12, product 09506000134352, expiry 2028-06-30": as on the pack, also where there is none.
QString lotText(const recovery::Placement& placement);
/// "Taken out and placed anew", "One more along the same track".
QString redoingName(recovery::Redoing how);
/// The same with the reason; empty if it was placed once.
QString redoneText(const recovery::Placement& placement);
/// "Lidocaine, plain, 1 %", what it was mixed with, and what was given outside the tracks.
QStringList solutionTexts(const recovery::Anaesthetic& given);
/// "62.5 kg", "not weighed".
QString weightText(const std::optional<double>& kilograms);
/// "50 mg", "not written down".
QString otherwiseText(const std::optional<double>& milligrams);
/// "1:200,000", one in so many, in the language's own digits.
QString ratioText(int oneIn);
/// What was done, agreed and seen beside the threads, each with its label: dressings, weight, consent.
QList<std::pair<QString, QString>> careFacts(const recovery::Treatment& treatment);
/// The same and the anaesthetic against the clinic's limits, a line each, with the plan and the note.
QStringList careLines(const recovery::Treatment& treatment, const anaesthesia::Limits& limits);
/// What asks for care about where it runs; empty if nothing does. Common practice, no source.
QString cautionText(const recovery::Placement& placement);
/// What the drawing says of side, zone and ending where the practitioner chose otherwise; empty if they agree.
QString drawnOtherwiseText(const recovery::Placement& placement);

}  // namespace ebbline::deskapp
