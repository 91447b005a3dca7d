#include "app/desk/sheet/sheet_content.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/correction_words.h"
#include "app/desk/model/course_events.h"
#include "app/desk/model/curve_board.h"
#include "app/desk/model/dose_words.h"
#include "app/desk/model/follow_up_editor.h"
#include "app/desk/model/plan_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/treatment_rows.h"
#include "app/desk/model/words.h"
#include "app/desk/queue/act_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <set>

namespace ebbline::deskapp {

namespace {

class Sheet {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};

template <typename Value>
QList<Value> valuesOf(const QList<RowList::Row>& rows)
{
    QList<Value> values;
    for (const auto& row : rows) {
        values.append(row.value.value<Value>());
    }
    return values;
}

void addTreatment(SheetContent& sheet, const recovery::Treatment& treatment, const anaesthesia::Limits& limits)
{
    sheet.tracks = tracksOf(treatment.placements);
    sheet.placements = valuesOf<PlacementRow>(placementRows(treatment.placements));
    const auto dose = doseWords(treatment, limits);
    sheet.anaesthetic << solutionTexts(treatment.anaesthetic);
    for (const auto& line : {dose.given, dose.maximum, dose.source, dose.clinic, dose.warning, dose.tracks, dose.problem}) {
        if (!line.isEmpty()) {
            sheet.anaesthetic << line;
        }
    }
    sheet.plan = planLines(treatment);
    sheet.note = QString::fromStdString(treatment.note);
    for (const auto& [label, value] : careFacts(treatment)) {
        sheet.facts.append({label, value});
    }
}

void addFollowUp(SheetContent& sheet, const std::optional<records::FollowUpRecorded>& record)
{
    sheet.followUpRecorded = record.has_value();
    QString change;
    QString satisfaction;
    QString complications;
    QString management;
    QString plan;
    QString by;
    if (record) {
        change = changeName(record->change);
        satisfaction = Sheet::tr("%1 of 5").arg(charts::digits(record->satisfaction));
        QStringList names;
        for (const auto& word : record->complications) {
            names << complicationName(QString::fromStdString(word));
        }
        complications = names.isEmpty() ? (record->uncomplicated ? Sheet::tr("none, uncomplicated course")
                                                                 : Sheet::tr("none named, not an uncomplicated course"))
                                        : QLocale().createSeparatedList(names);
        management = record->management.empty() ? QStringLiteral("–") : QString::fromStdString(record->management);
        plan = record->nextPlan.empty() ? QStringLiteral("–") : QString::fromStdString(record->nextPlan);
        by = Sheet::tr("%1, %2", "person, time").arg(QString::fromStdString(record->by), stampText(record->at));
    }
    sheet.followUp = {{Sheet::tr("Change against before"), change},
                      {Sheet::tr("Patient's satisfaction"), satisfaction},
                      {Sheet::tr("Complications"), complications},
                      {Sheet::tr("Management"), management},
                      {Sheet::tr("Next plan"), plan},
                      {Sheet::tr("Recorded by"), by}};
}

}  // namespace

Result<SheetContent> sheetOf(Workplace& workplace, const recovery::CourseId& course)
{
    const auto view = workplace.desk().course(course);
    if (!view) {
        return fail(view.error());
    }
    const auto now = workplace.now();
    const auto clinic = workplace.desk().clinic();
    SheetContent sheet;
    sheet.clinic = clinic ? QString::fromStdString(clinic->contacts.clinicName) : QString();
    sheet.title = Sheet::tr("Follow-up sheet");
    sheet.patient = QString::fromStdString(view->summary.patientName);
    const auto person = QString::fromStdString(workplace.desk().person());
    sheet.printed = person.isEmpty() ? Sheet::tr("Made %1, %2").arg(dateText(now), zonedClockText(now))
                                     : Sheet::tr("Made %1, %2, by %3").arg(dateText(now), zonedClockText(now), person);
    sheet.facts.append({Sheet::tr("Treated"), Sheet::tr("%1, %2", "date, time").arg(dateText(view->summary.treated), zonedClockText(view->summary.treated))});
    sheet.facts.append({Sheet::tr("Day of recovery"), charts::digits(view->summary.day)});
    sheet.facts.append({Sheet::tr("Protocol"), Sheet::tr("%1, version %2").arg(QString::fromStdString(view->protocol.name),
                                                                           charts::digits(view->protocol.version))});
    if (view->state != nullptr && view->state->treatment) {
        addTreatment(sheet, view->state->treatment->treatment, workplace.desk().doseLimits());
        sheet.corrections = treatmentCorrectionLines(*view->state, &stampText);
    }
    for (const auto symptom : recovery::allSymptoms) {
        const auto pair = curvesOf(workplace.desk(), course, symptom);
        if (sheet.bandLegend.isEmpty()) {
            sheet.bandLegend = charts::bandLegend(pair.left.provenance);
        }
        if (!pair.left.points.empty() || !pair.right.points.empty()) {
            sheet.curves.append({charts::symptomName(symptom), charts::pictureOf(pair.left), charts::pictureOf(pair.right)});
        }
    }
    sheet.findings = valuesOf<FindingRow>(findingRows(*view, &stampText));
    if (view->state != nullptr) {
        sheet.calls = callLines(*view, &stampText);
    }
    sheet.adherence = view->remindersDue == 0
                          ? Sheet::tr("No reminder was due.")
                          : Sheet::tr("%1 of %Ln reminder(s) answered “done”.", nullptr, static_cast<int>(view->remindersDue))
                                .arg(charts::withPercent(QLocale().toString(qRound(view->remindersDone * 100))));
    if (view->state != nullptr) {
        sheet.events = eventsOf(*view->state);
        std::set<int> days;
        for (const auto& [id, history] : view->state->entries) {
            days.insert(clock::dayOfRecovery(view->summary.treated, history.current().at));
        }
        sheet.entries = Sheet::tr("%Ln entry(ies)", nullptr, static_cast<int>(view->state->entries.size()))
                        + QStringLiteral(", ") + Sheet::tr("on %Ln day(s)", nullptr, static_cast<int>(days.size()));
        addFollowUp(sheet, view->state->followUp);
    }
    sheet.openQuestions = openQuestionsOf(*view);
    return sheet;
}

QString SheetContent::asText() const
{
    QStringList lines{clinic, title, patient, printed};
    for (const auto& fact : facts) {
        lines << fact.label + QStringLiteral(": ") + fact.value;
    }
    for (const auto& placement : placements) {
        lines << placement.spoken;
    }
    lines << plan << anaesthetic << note << corrections;
    for (const auto& curve : curves) {
        lines << curve.left.sentence << curve.right.sentence;
    }
    lines << bandLegend;
    for (const auto& pair : photos) {
        lines << pair.asText();
    }
    for (const auto& finding : findings) {
        lines << finding.spoken;
    }
    lines << calls << adherence << entries << openQuestions;
    for (const auto& field : followUp) {
        lines << field.label + QStringLiteral(": ") + field.value;
    }
    lines.removeAll(QString());
    return lines.join(u'\n');
}

}  // namespace ebbline::deskapp
