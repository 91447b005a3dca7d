#include "app/desk/model/treatment_rows.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/treatment_editor.h"
#include "app/desk/model/words.h"
#include "app/face/placement_hint.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

class Treatment {
    Q_DECLARE_TR_FUNCTIONS(Treatment)
};

int pointsOf(const std::map<recovery::Stream, recovery::Score>& scores, recovery::Symptom symptom, recovery::Side side)
{
    const auto found = scores.find({symptom, side});
    return found == scores.end() ? -1 : found->second.points();
}

}  // namespace

QString threadText(const recovery::Placement& placement)
{
    return Treatment::tr("%1, %2, %3 G, %4 mm", "material, form, gauge, length")
        .arg(materialName(placement.material), formName(placement.form), charts::digits(placement.gauge),
             charts::digits(placement.lengthMm));
}

QString cautionText(const recovery::Placement& placement)
{
    const auto hint = face::hintFor(placement.view, placement.entry, placement.end);
    QStringList texts;
    if (hint.crossesNotch) {
        texts << Treatment::tr("Runs near the notch of the jaw: facial artery and marginal nerve.");
    }
    if (placement.ending == recovery::Ending::pastMovingZone) {
        texts << Treatment::tr("Ends past the zone that moves with speech and chewing.");
    } else if (hint.endsIn == face::Caution::movingZone) {
        texts << Treatment::tr("The end is drawn inside the moving zone.");
    }
    return texts.join(u' ');
}

QList<face::Track> tracksOf(const std::vector<recovery::Placement>& placements)
{
    QList<face::Track> tracks;
    int number = 0;
    for (const auto& placement : placements) {
        face::Track track;
        track.number = ++number;
        track.view = static_cast<int>(placement.view);
        track.left = placement.side == recovery::Side::left;
        track.entry = QPointF(placement.entry.x, placement.entry.y);
        track.end = QPointF(placement.end.x, placement.end.y);
        tracks.append(track);
    }
    return tracks;
}

QList<RowList::Row> placementRows(const std::vector<recovery::Placement>& placements)
{
    QList<RowList::Row> rows;
    int number = 0;
    for (const auto& placement : placements) {
        PlacementRow row;
        row.number = ++number;
        row.side = sideTitle(placement.side);
        row.isLeft = placement.side == recovery::Side::left;
        row.zone = zoneName(placement.zone);
        row.ending = endingName(placement.ending);
        row.thread = threadText(placement);
        row.lot = placement.lot.empty() ? Treatment::tr("no lot") : Treatment::tr("lot %1").arg(leftToRight(placement.lot));
        row.volume = Treatment::tr("%1 mL").arg(QLocale().toString(placement.anaestheticMl, 'f', 1));
        row.caution = cautionText(placement);
        row.spoken = Treatment::tr("Thread %1: %2, %3. %4. %5, %6, %7. %8", "number, side, zone, ending, thread, lot, volume, caution")
                         .arg(charts::digits(number), row.side, row.zone, row.ending, row.thread, row.lot, row.volume, row.caution);
        rows.append({QString::number(number), {}, QVariant::fromValue(row)});
    }
    return rows;
}

QList<RowList::Row> baselineRows(const std::map<recovery::Stream, recovery::Score>& baseline)
{
    QList<RowList::Row> rows;
    for (const auto symptom : recovery::allSymptoms) {
        BaselineRow row;
        row.symptom = static_cast<int>(symptom);
        row.name = charts::symptomName(symptom);
        row.left = pointsOf(baseline, symptom, recovery::Side::left);
        row.right = pointsOf(baseline, symptom, recovery::Side::right);
        rows.append({QString::number(row.symptom), {}, QVariant::fromValue(row)});
    }
    return rows;
}

QList<RowList::Row> patientRows(const std::vector<records::PatientRegistered>& patients, const QString& search)
{
    QList<RowList::Row> rows;
    for (const auto& patient : patients) {
        PatientRow row;
        row.name = QString::fromStdString(patient.name);
        row.phone = leftToRight(patient.phone);
        if (search.isEmpty() || row.name.contains(search, Qt::CaseInsensitive)
            || QString::fromStdString(patient.phone).contains(search)) {
            row.key = keyOf(patient.patient);
            rows.append({row.key, {}, QVariant::fromValue(row)});
        }
    }
    std::sort(rows.begin(), rows.end(), [](const RowList::Row& a, const RowList::Row& b) {
        return QString::localeAwareCompare(a.value.value<PatientRow>().name, b.value.value<PatientRow>().name) < 0;
    });
    return rows;
}

}  // namespace ebbline::deskapp
