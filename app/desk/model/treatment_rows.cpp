#include "app/desk/model/treatment_rows.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/course_rows.h"
#include "app/desk/model/dose_words.h"
#include "app/desk/model/plan_words.h"
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

int pointsOf(const recovery::Scores& scores, recovery::Symptom symptom, recovery::Side side)
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

QString instrumentName(recovery::Instrument instrument)
{
    return instrument == recovery::Instrument::bluntCannula ? Treatment::tr("Blunt cannula") : Treatment::tr("Sharp needle");
}

QString instrumentText(const recovery::Placement& placement)
{
    const auto kind = placement.instrument ? instrumentName(*placement.instrument) : QString();
    if (!placement.instrumentLengthMm) {
        return kind;
    }
    const auto length = charts::digits(*placement.instrumentLengthMm);
    return placement.instrument ? Treatment::tr("%1, %2 mm", "needle or cannula, its length").arg(kind, length)
                                : Treatment::tr("Needle or cannula of %1 mm").arg(length);
}

QString epinephrineText(const recovery::Placement& placement)
{
    if (!placement.epinephrineAt) {
        return {};
    }
    switch (*placement.epinephrineAt) {
    case recovery::EpinephrineAt::nowhere:
        return Treatment::tr("no epinephrine");
    case recovery::EpinephrineAt::entryPoint:
        return Treatment::tr("epinephrine at the entry point");
    case recovery::EpinephrineAt::track:
        return Treatment::tr("epinephrine along the track");
    case recovery::EpinephrineAt::both:
        return Treatment::tr("epinephrine at entry point and along the track");
    }
    return {};
}

QString lotText(const recovery::Placement& placement)
{
    auto lot = placement.lot.empty() ? Treatment::tr("no lot") : Treatment::tr("lot %1").arg(leftToRight(placement.lot));
    if (placement.article) {
        lot = Treatment::tr("%1, product %2", "lot, number of the product as on the pack").arg(lot, leftToRight(*placement.article));
    }
    return placement.expiry ? Treatment::tr("%1, expiry %2", "lot, date as on the pack").arg(lot, leftToRight(*placement.expiry)) : lot;
}

QString redoingName(recovery::Redoing how)
{
    return how == recovery::Redoing::added ? Treatment::tr("One more along the same track") : Treatment::tr("Taken out and placed anew");
}

QString redoneText(const recovery::Placement& placement)
{
    return placement.redone ? Treatment::tr("%1: %2", "label, value").arg(redoingName(placement.redone->how), QString::fromStdString(placement.redone->reason))
                            : QString();
}

QString ratioText(int oneIn)
{
    const QLocale locale;
    return leftToRight((locale.toString(1) + u':' + locale.toString(oneIn)).toStdString());
}

QStringList solutionTexts(const recovery::Anaesthetic& given)
{
    const QLocale locale;
    QStringList texts{Treatment::tr("%1, %2%", "drug, percent").arg(drugName(given.drug), locale.toString(given.percent, 'g', 3))};
    if (given.epinephrineOneIn > 0) {
        texts << Treatment::tr("epinephrine %1").arg(ratioText(given.epinephrineOneIn));
    }
    // Parts of solution to one of bicarbonate, as it is mixed and chosen.
    texts << (given.bicarbonatePart > 0
                  ? Treatment::tr("buffered with 8.4% bicarbonate, 1 part to %1").arg(locale.toString(1 / given.bicarbonatePart, 'g', 3))
                  : Treatment::tr("not buffered"));
    if (given.extraMl > 0) {
        texts << Treatment::tr("%1 mL outside the tracks").arg(locale.toString(given.extraMl, 'f', 1));
    }
    return texts;
}

QString weightText(const std::optional<double>& kilograms)
{
    return kilograms ? Treatment::tr("%1 kg").arg(QLocale().toString(*kilograms, 'f', QLocale::FloatingPointShortest))
                     : Treatment::tr("not weighed");
}

QString otherwiseText(const std::optional<double>& milligrams)
{
    return milligrams ? Treatment::tr("%1 mg").arg(QLocale().toString(*milligrams, 'f', QLocale::FloatingPointShortest))
                      : Treatment::tr("not written down");
}

QList<std::pair<QString, QString>> careFacts(const recovery::Treatment& treatment)
{
    const auto yesNo = [](bool yes) { return yes ? Treatment::tr("yes") : Treatment::tr("no"); };
    const auto baseline = scoresText(treatment.baseline);
    return {{Treatment::tr("Threads placed by"), treatment.placedBy.empty() ? Treatment::tr("not written down") : QString::fromStdString(treatment.placedBy)},
            {Treatment::tr("Dressings"), yesNo(treatment.dressings)},
            {Treatment::tr("Consent"), yesNo(treatment.consentGiven)},
            {Treatment::tr("Cautions explained"), yesNo(treatment.cautionsGiven)},
            {Treatment::tr("May teach the usual range"), yesNo(treatment.learningConsent)},
            {Treatment::tr("Weight"), weightText(treatment.weightKg)},
            {Treatment::tr("Lidocaine given otherwise"), otherwiseText(treatment.otherwiseMg)},
            {Treatment::tr("Scores right after"), baseline.isEmpty() ? Treatment::tr("none") : baseline}};
}

QStringList careLines(const recovery::Treatment& treatment, const anaesthesia::Limits& limits)
{
    QStringList lines{solutionTexts(treatment.anaesthetic).join(QStringLiteral(" · "))};
    const auto dose = doseWords(treatment, limits);
    for (const auto& line : {dose.given, dose.maximum, dose.clinic, dose.warning, dose.problem}) {
        if (!line.isEmpty()) {
            lines << line;
        }
    }
    for (const auto& [label, value] : careFacts(treatment)) {
        lines << Treatment::tr("%1: %2", "label, value").arg(label, value);
    }
    if (const auto plan = planLines(treatment); !plan.isEmpty()) {
        lines << Treatment::tr("%1: %2", "label, value").arg(Treatment::tr("The plan"), plan.first()) << plan.mid(1);
    }
    if (!treatment.note.empty()) {
        lines << QString::fromStdString(treatment.note);
    }
    return lines;
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

QString drawnOtherwiseText(const recovery::Placement& placement)
{
    const auto hint = face::hintFor(placement.view, placement.entry, placement.end);
    QStringList drawn;
    if (placement.side != hint.side) {
        drawn << sideTitle(hint.side);
    }
    if (placement.zone != hint.zone) {
        drawn << zoneName(hint.zone);
    }
    if (placement.ending != hint.ending) {
        drawn << endingName(hint.ending);
    }
    return drawn.isEmpty() ? QString() : Treatment::tr("What you chose stays. The drawing says otherwise: %1.").arg(QLocale().createSeparatedList(drawn));
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

QString givenText(const PlacementRow& row)
{
    return row.epinephrine.isEmpty() ? row.volume : row.volume + QStringLiteral(" · ") + row.epinephrine;
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
        row.lot = lotText(placement);
        for (const auto& [cell, more] : {std::pair(&row.thread, instrumentText(placement)), std::pair(&row.lot, redoneText(placement))}) {
            if (!more.isEmpty()) {
                *cell += QStringLiteral(" · ") + more;
            }
        }
        row.volume = Treatment::tr("%1 mL").arg(QLocale().toString(placement.anaestheticMl, 'f', 1));
        row.epinephrine = epinephrineText(placement);
        row.caution = cautionText(placement);
        row.spoken = Treatment::tr("Thread %1: %2, %3. %4. %5, %6, %7. %8", "number, side, zone, ending, thread, lot, volume, caution")
                         .arg(charts::digits(number), row.side, row.zone, row.ending, row.thread, row.lot, givenText(row), row.caution);
        rows.append({QString::number(number), {}, QVariant::fromValue(row)});
    }
    return rows;
}

QList<RowList::Row> baselineRows(const recovery::Scores& baseline)
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
