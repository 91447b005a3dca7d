#include "app/desk/model/course_look.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/course_rows.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "app/desk/queue/act_words.h"
#include "core/bytes/text.h"
#include "core/clock/iso8601.h"
#include "core/exchange/table_moments.h"
#include "core/exchange/tables.h"
#include "core/triage/course_curve.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

class CourseLook {
    Q_DECLARE_TR_FUNCTIONS(CourseLook)
};

std::string lookName(Workplace& workplace, const recovery::CourseId& course)
{
    return "look/" + bytes::toHex(course.view()) + "/" + workplace.desk().person();
}

const journal::CourseState* stateOf(Workplace& workplace, const recovery::CourseId& course)
{
    if (!workplace.isOpen()) {
        return nullptr;
    }
    const auto& courses = workplace.state().courses;
    const auto found = courses.find(course);
    return found == courses.end() ? nullptr : &found->second;
}

}  // namespace

QString newsSinceLook(Workplace& workplace, const recovery::CourseId& course)
{
    const auto* state = stateOf(workplace, course);
    if (state == nullptr || workplace.desk().person().empty()) {
        return {};
    }
    const auto kept = workplace.desk().vault().kept(lookName(workplace, course));
    const auto last = kept ? clock::parseIso8601(std::string(kept->begin(), kept->end())) : fail(kept.error());
    if (!last) {
        return CourseLook::tr("You have not looked at this course before.");
    }
    QStringList news;
    int entries = 0;
    for (const auto& [id, history] : state->entries) {
        entries += history.current().recordedAt.at > last->at ? 1 : 0;
    }
    if (entries > 0) {
        news << CourseLook::tr("%Ln entry(ies)", nullptr, entries);
    }
    const auto findings = triage::findingsOf(*state, workplace.now());
    const auto raised = std::count_if(findings.begin(), findings.end(), [&](const auto& one) { return one.raisedAt.at > last->at; });
    if (raised > 0) {
        news << CourseLook::tr("%Ln finding(s)", nullptr, static_cast<int>(raised));
    }
    const auto written = std::count_if(state->messages.begin(), state->messages.end(),
                                       [&](const auto& one) { return one.by.empty() && one.at.at > last->at; });
    if (written > 0) {
        news << CourseLook::tr("%Ln message(s)", nullptr, static_cast<int>(written));
    }
    for (const auto& act : state->acts) {
        if (act.at.at > last->at && act.by != workplace.desk().person()) {
            const auto line = actText(act, [&](const clock::Moment& at) { return whenText(at, workplace.now()); });
            if (!news.contains(line)) {
                news << line;
            }
        }
    }
    for (const auto& call : state->calls) {
        if (call.value.at.at > last->at && call.value.by != workplace.desk().person()) {
            news << callText(*state, call, [&](const clock::Moment& at) { return whenText(at, workplace.now()); });
        }
    }
    const auto when = whenText(*last, workplace.now());
    return news.isEmpty() ? CourseLook::tr("Nothing new since you last looked, %1.").arg(when)
                          : CourseLook::tr("New since you last looked, %1: %2.", "when, list").arg(when, QLocale().createSeparatedList(news));
}

Done rememberLook(Workplace& workplace, const recovery::CourseId& course)
{
    if (!workplace.isOpen() || workplace.desk().person().empty()) {
        return {};
    }
    return workplace.desk().vault().keep(lookName(workplace, course), bytes::viewOf(clock::toIso8601(workplace.now())));
}

QString forecastText(Workplace& workplace, const recovery::CourseId& course)
{
    const auto* state = stateOf(workplace, course);
    if (state == nullptr || state->followUp) {
        return {};
    }
    QStringList parts;
    int day = 0;
    for (const auto symptom : recovery::allSymptoms) {
        for (const auto side : recovery::bothSides) {
            const auto curve = workplace.desk().curve(course, {symptom, side});
            if (curve.forecast && curve.forecast->high > 1) {
                day = curve.forecast->day;
                parts << CourseLook::tr("%1 %2 to %3", "stream, low, high")
                             .arg(charts::streamName({symptom, side}), charts::digits(curve.forecast->low), charts::digits(curve.forecast->high));
            } else if (curve.forecast) {
                day = curve.forecast->day;
            }
        }
    }
    if (day == 0) {
        return CourseLook::tr("Too few entries for a forecast to the follow-up.");
    }
    return parts.isEmpty() ? CourseLook::tr("Expected at the follow-up, day %1: every score 1 or below.").arg(charts::digits(day))
                           : CourseLook::tr("Expected at the follow-up, day %1, in 8 of 10 such courses: %2; everything else 1 or below.", "day, list")
                                 .arg(charts::digits(day), parts.join(QStringLiteral("; ")));
}

Paper coursePaper(Workplace& workplace, const recovery::CourseId& course)
{
    Paper paper;
    const auto* state = stateOf(workplace, course);
    const auto view = state != nullptr ? workplace.desk().course(course) : fail(Reason::notFound, "course: unknown");
    if (!view) {
        return paper;
    }
    const auto now = workplace.now();
    const auto name = QString::fromStdString(view->summary.patientName);
    const auto clinic = workplace.desk().clinic();
    paper.title = CourseLook::tr("Course");
    paper.stamp = CourseLook::tr("%1 · %2 · %3", "patient, clinic, when")
                      .arg(name, clinic ? QString::fromStdString(clinic->contacts.clinicName) : QString(), stampText(now));
    PaperPart who{{}, {CourseLook::tr("Treated %1, %2 now").arg(dateText(view->summary.treated), dayText(view->summary.day)), forecastText(workplace, course)}, {}, {}};
    who.lines.removeAll(QString());
    paper.parts.append(who);

    PaperPart findings{CourseLook::tr("Findings"), {}, {CourseLook::tr("How urgent"), CourseLook::tr("What and why"), CourseLook::tr("Raised"), CourseLook::tr("What was done")}, {}};
    for (const auto& row : findingRows(*view, &stampText)) {
        const auto finding = row.value.value<FindingRow>();
        findings.rows.append({finding.urgencyName, finding.title + QStringLiteral(". ") + finding.reason, finding.when, finding.acts.join(QLatin1Char('\n'))});
    }
    PaperPart entries{CourseLook::tr("Entries"), {}, {CourseLook::tr("Day"), CourseLook::tr("Scores"), CourseLook::tr("Signs and words"), CourseLook::tr("Marks")}, {}};
    for (const auto& row : entryRows(*state, &stampText, cameEarly(workplace))) {
        const auto entry = row.value.value<EntryRow>();
        QStringList said{entry.signs, entry.note};
        said.removeAll(QString());
        entries.rows.append({entry.day + QStringLiteral(", ") + entry.when, entry.scores, said.join(QStringLiteral(". ")), entry.marks});
    }
    PaperPart messages{CourseLook::tr("Messages"), {}, {}, {}};
    for (const auto& row : messageRows(*state, name, &stampText)) {
        const auto message = row.value.value<MessageRow>();
        messages.lines << message.who + QStringLiteral(", ") + message.when + QStringLiteral(": ") + message.text;
    }
    for (auto* part : {&findings, &entries}) {
        if (part->rows.isEmpty()) {
            part->header.clear();
            part->lines << CourseLook::tr("None.");
        }
        paper.parts.append(*part);
    }
    if (const auto calls = callLines(*view, &stampText); !calls.isEmpty()) {
        paper.parts.append({CourseLook::tr("Calls noted on the course"), calls, {}, {}});
    }
    if (!messages.lines.isEmpty()) {
        paper.parts.append(messages);
    }
    return paper;
}

std::string courseTable(Workplace& workplace, const recovery::CourseId& course)
{
    std::vector<exchange::ScoreRow> rows;
    if (const auto* state = stateOf(workplace, course)) {
        const auto treated = triage::treatedAt(*state);
        std::vector<const recovery::Entry*> standing;
        for (const auto& [id, history] : state->entries) {
            standing.push_back(&history.current());
        }
        for (const auto& [entry, at] : exchange::inTables(standing, treated)) {
            for (const auto& [stream, score] : entry->scores) {
                rows.push_back({bytes::toHex(course.view()), treated, at, stream.symptom, stream.side, score});
            }
        }
    }
    return exchange::writeScores(rows);
}

}  // namespace ebbline::deskapp
