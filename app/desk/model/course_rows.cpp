#include "app/desk/model/course_rows.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/finding_words.h"
#include "app/desk/model/role_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "app/desk/model/workplace.h"
#include "app/desk/photos/photo_rows.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

#include <algorithm>
#include <tuple>

namespace ebbline::deskapp {

namespace {

class Course {
    Q_DECLARE_TR_FUNCTIONS(Course)
};

QString signsText(const recovery::Entry& entry)
{
    QStringList parts;
    for (const auto sign : entry.present) {
        parts << signName(sign);
    }
    if (entry.temperature) {
        parts << Course::tr("%1 °C").arg(QLocale().toString(entry.temperature->celsius(), 'f', 1));
    }
    return parts.join(QStringLiteral(" · "));
}

}  // namespace

QString scoresText(const recovery::Scores& scores)
{
    QStringList parts;
    for (const auto symptom : recovery::allSymptoms) {
        QStringList sides;
        for (const auto side : {recovery::Side::none, recovery::Side::left, recovery::Side::right}) {
            const auto found = scores.find({symptom, side});
            if (found == scores.end()) {
                continue;
            }
            const auto points = charts::digits(found->second.points());
            sides << (side == recovery::Side::none   ? points
                      : side == recovery::Side::left ? Course::tr("L %1", "left, score").arg(points)
                                                     : Course::tr("R %1", "right, score").arg(points));
        }
        if (!sides.isEmpty()) {
            parts << charts::symptomName(symptom) + u' ' + sides.join(u' ');
        }
    }
    return parts.join(QStringLiteral(" · "));
}

QString actText(const records::FindingActed& act, const Stamp& stamp)
{
    auto text = Course::tr("%1 by %2, %3", "act, person, time")
                    .arg(actName(act.act), QString::fromStdString(act.by), stamp(act.at));
    if (act.outcome != records::Outcome::none) {
        text += QStringLiteral(". ") + outcomeName(act.outcome);
    }
    if (!act.note.empty()) {
        text += QStringLiteral(". ") + QString::fromStdString(act.note);
    }
    return text;
}

QString actText(const records::FindingActed& act, const Stamp& stamp, bool beyondRole)
{
    return beyondRole ? actText(act, stamp) + QStringLiteral(" · ") + beyondRoleText() : actText(act, stamp);
}

bool isShownByPhone(const triage::Finding& finding, const journal::CourseState& course)
{
    return std::any_of(course.warnings.begin(), course.warnings.end(), [&](const auto& warning) {
        // An older phone names what the finding is about and no more; its urgency tells which of them it showed.
        const bool same = triage::isKeyOf(warning.rule, finding) || finding.key.starts_with(warning.rule + "/");
        return same && warning.urgency <= finding.urgency;
    });
}

QString raisingEntry(const triage::Finding& finding, const journal::CourseState& course)
{
    const auto* trigger = std::get_if<triggers::Finding>(&finding.what);
    if (trigger != nullptr && trigger->trigger == triggers::Trigger::silence) {
        return {};
    }
    if (finding.entry) {
        return course.entries.contains(*finding.entry) ? keyOf(*finding.entry) : QString();
    }
    // A correction may have moved the moment since: every version counts.
    for (const auto& [id, history] : course.entries) {
        if (std::ranges::any_of(history.versions, [&](const auto& version) { return version.value.at.at == finding.raisedAt.at; })) {
            return keyOf(id);
        }
    }
    return {};
}

QList<RowList::Row> findingRows(const desk::CourseView& view, const Stamp& stamp)
{
    std::vector<const triage::Finding*> order;
    for (const auto& finding : view.findings) {
        order.push_back(&finding);
    }
    std::stable_sort(order.begin(), order.end(), [](const auto* a, const auto* b) {
        const auto rank = [](const auto* finding) {
            return std::make_tuple(!finding->open, finding->open ? static_cast<int>(finding->urgency) : 0);
        };
        return rank(a) < rank(b);
    });
    const auto text = [&](const records::FindingActed& act) {
        return actText(act, stamp, std::ranges::find(view.beyondRole, act) != view.beyondRole.end());
    };
    QList<RowList::Row> rows;
    for (const auto* finding : order) {
        FindingRow row;
        row.key = QString::fromStdString(finding->key);
        row.urgency = static_cast<int>(finding->urgency);
        row.urgencyName = urgencyName(finding->urgency);
        row.title = findingTitle(*finding);
        row.reason = findingReason(*finding);
        row.basis = findingBasis(*finding);
        row.advice = urgencyAdvice(finding->urgency, view.state != nullptr && isShownByPhone(*finding, *view.state));
        row.when = stamp(finding->raisedAt);
        row.open = finding->open;
        row.entryKey = view.state != nullptr ? raisingEntry(*finding, *view.state) : QString();
        for (const auto& act : finding->actsBefore) {
            row.acts << (finding->entry ? Course::tr("Before it was worse: %1", "an act") : Course::tr("By the day that stood then: %1", "an act")).arg(text(act));
        }
        for (const auto& act : finding->acts) {
            row.acts << text(act);
        }
        row.spoken = Course::tr("%1: %2. %3 Raised %4. %5", "urgency, title, reason, time, acts")
                         .arg(row.urgencyName, row.title, row.reason, row.when, row.acts.join(QStringLiteral(". ")));
        rows.append({row.key, row.open ? QStringLiteral("open") : QStringLiteral("closed"), QVariant::fromValue(row)});
    }
    return rows;
}

CameEarly cameEarly(Workplace& workplace)
{
    CameEarly early;
    const auto found = workplace.desk().vault().cameEarly();
    for (const auto& [operation, at] : found ? *found : std::map<journal::OperationId, clock::Instant>{}) {
        early.emplace(operation, workplace.zone().moment(at));
    }
    return early;
}

QList<RowList::Row> entryRows(const journal::CourseState& course, const Stamp& stamp, const CameEarly& early)
{
    std::vector<const journal::EntryHistory*> order;
    for (const auto& [id, history] : course.entries) {
        order.push_back(&history);
    }
    std::stable_sort(order.begin(), order.end(),
                     [](const auto* a, const auto* b) { return a->current().at.at > b->current().at.at; });
    QList<RowList::Row> rows;
    for (const auto* history : order) {
        const auto& entry = history->current();
        EntryRow row;
        row.key = keyOf(entry.id);
        if (course.treatment) {
            row.day = dayText(clock::dayOfRecovery(course.treatment->treatment.at, entry.at));
        }
        row.when = stamp(entry.at);
        row.scores = scoresText(entry.scores);
        row.signs = signsText(entry);
        row.note = QString::fromStdString(entry.note);
        row.photos = photosOfEntry(course, entry.id);
        QStringList marks;
        if (entry.isLate()) {
            marks << Course::tr("entered late, %1").arg(stamp(entry.recordedAt));
        }
        if (const auto came = early.find(history->versions.back().operation); came != early.end()) {
            marks << Course::tr("came before the time that it bears, %1: the clock of the phone or of this desk is wrong").arg(stamp(came->second));
        }
        if (history->amended()) {
            const auto& before = history->versions[history->versions.size() - 2].value;
            const auto was = scoresText(before.scores);
            marks << Course::tr("amended; was: %1").arg(was.isEmpty() ? Course::tr("no scores") : was);
        }
        row.marks = marks.join(QStringLiteral(" · "));
        // Only of the version that stands in this row; what somebody saw before a correction is no opening of it.
        const auto* opening = course.opening(*history);
        const auto* before = course.earlierOpening(*history);
        row.isOpened = opening != nullptr;
        row.opened = opening ? Course::tr("Opened by %1, %2").arg(QString::fromStdString(opening->by), stamp(opening->at))
                     : before ? Course::tr("Correction not opened yet; %1 opened an earlier version, %2")
                                    .arg(QString::fromStdString(before->by), stamp(before->at))
                              : Course::tr("Not opened yet");
        row.spoken = QStringList{row.day, row.when, row.scores, row.signs, row.note, row.photos, row.marks, row.opened}
                         .filter(QRegularExpression(QStringLiteral("."))).join(QStringLiteral(". "));
        rows.append({row.key, {}, QVariant::fromValue(row)});
    }
    return rows;
}

QList<RowList::Row> messageRows(const journal::CourseState& course, const QString& patient, const Stamp& stamp)
{
    QList<RowList::Row> rows;
    int number = 0;
    for (const auto& message : course.messages) {
        MessageRow row;
        row.ours = !message.by.empty();
        row.who = row.ours ? QString::fromStdString(message.by) : patient;
        row.when = stamp(message.at);
        row.text = QString::fromStdString(message.text);
        const auto read = course.reads.find(message.message);
        if (row.ours) {
            // Only what is proved: the phone said that it was read, or else no claim beyond "sent".
            row.state = read != course.reads.end() ? Course::tr("Read on the phone, %1").arg(stamp(read->second.at))
                                                   : Course::tr("Not read yet");
        }
        rows.append({QString::number(++number), {}, QVariant::fromValue(row)});
    }
    return rows;
}

}  // namespace ebbline::deskapp
