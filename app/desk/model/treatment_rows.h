#pragma once
/// \file
/// The lists of a treatment in words, shared by the editor and the follow-up sheet.

#include "app/desk/model/row_list.h"
#include "app/face/face_paint.h"
#include "core/records/bodies.h"

#include <QStringList>

namespace ebbline::deskapp {

QList<RowList::Row> patientRows(const std::vector<records::PatientRegistered>& patients, const QString& search);
QList<RowList::Row> placementRows(const std::vector<recovery::Placement>& placements);
QList<RowList::Row> baselineRows(const std::map<recovery::Stream, recovery::Score>& baseline);
QList<face::Track> tracksOf(const std::vector<recovery::Placement>& placements);

/// "PDO, barbed two ways, 19 G, 100 mm".
QString threadText(const recovery::Placement& placement);
/// What asks for care about where it runs; empty if nothing does. Common practice, no source.
QString cautionText(const recovery::Placement& placement);

}  // namespace ebbline::deskapp
