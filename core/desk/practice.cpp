#include "core/desk/practice.h"

#include "core/aftercare/visit.h"
#include "core/triage/course_curve.h"

#include <algorithm>
#include <map>
#include <set>

namespace ebbline::desk {

namespace {

using aftercare::InstructionKind;

AlertTally alertOf(const triage::Finding& finding, const journal::CourseState& course)
{
    AlertTally alert;
    alert.urgency = finding.urgency;
    alert.raised = finding.raisedAt.at;
    const auto* trigger = std::get_if<triggers::Finding>(&finding.what);
    alert.silence = trigger && trigger->trigger == triggers::Trigger::silence;
    bool closed = false;
    for (const records::FindingActed& act : finding.acts) {
        if (act.act == records::Act::closed) {
            closed = true;
            alert.outcome = act.outcome;
        } else if (act.act == records::Act::reopened) {
            closed = false;
            alert.outcome = records::Outcome::none;
        }
        alert.broughtForward = alert.broughtForward || act.act == records::Act::visitBroughtForward;
    }
    if (closed)
        alert.answer = AlertTally::Answer::closed;
    else if (course.followUp && !finding.open)
        alert.answer = AlertTally::Answer::atFollowUp;
    return alert;
}

/// When the course stops asking: now, or its follow-up.
clock::Moment endOf(const journal::CourseState& course, const clock::Moment& now)
{
    return course.followUp && course.followUp->at.at < now.at ? course.followUp->at : now;
}

void countKept(CourseTally& tally, const journal::CourseState& course, const clock::Moment& end, const aftercare::Zone& zone)
{
    const clock::Moment& treated = course.opened->treated;
    const auto found = aftercare::Zone::find(treated.zone);
    std::set<int> told;
    for (const auto& [id, history] : course.entries)
        told.insert(std::max(0, clock::dayOfRecovery(treated, history.current().at)));
    std::set<int> asked;
    std::map<InstructionKind, KeptTally> kept;
    for (const aftercare::Reminder& reminder :
         aftercare::remindersOf(course.opened->protocol.carePlan, treated, aftercare::visitOf(course.opened->followUp),
                                found ? *found : zone, {})) {
        if (reminder.due > end.at)
            break;
        if (reminder.kind == InstructionKind::diaryEntry) {
            asked.insert(reminder.day);
            continue;
        }
        KeptTally& one = kept[reminder.kind];
        one.kind = reminder.kind;
        ++one.due;
        if (const auto answer = course.reminders.find(reminder.key); answer != course.reminders.end()) {
            one.done += answer->second.answer == records::ReminderAnswer::done ? 1 : 0;
            one.notDone += answer->second.answer == records::ReminderAnswer::notDone ? 1 : 0;
        }
    }
    for (const auto& [kind, one] : kept)
        tally.kept.push_back(one);
    tally.askedDays = static_cast<long>(asked.size());
    tally.toldDays = std::count_if(asked.begin(), asked.end(), [&](int day) { return told.contains(day); });
}

}  // namespace

bool AlertTally::worthIt() const
{
    return broughtForward || outcome == records::Outcome::advised || outcome == records::Outcome::treatedInClinic
           || outcome == records::Outcome::sentToUrgentCare;
}

std::optional<CourseTally> tallyOf(const recovery::CourseId& id, const journal::CourseState& course, const clock::Moment& now,
                                   const aftercare::Zone& zone)
{
    if (!course.opened)
        return std::nullopt;
    CourseTally tally;
    tally.course = id;
    tally.treated = course.opened->treated.at;
    for (const triage::Finding& finding : triage::findingsOf(course, now))
        if (finding.urgency != recovery::Urgency::atReview)
            tally.alerts.push_back(alertOf(finding, course));
    countKept(tally, course, endOf(course, now), zone);
    return tally;
}

TallyStamp tallyStampOf(const journal::CourseState& course, const clock::Moment& now)
{
    TallyStamp stamp;
    for (const auto& [id, history] : course.entries)
        stamp.spoken += history.versions.size();
    stamp.spoken += course.acts.size() + course.actsTakenBack.size() + course.treatmentVersions.size() + course.formerCounts.size() + (course.opened ? 1 : 0) + (course.followUp ? 1 : 0);
    for (const auto& [key, answer] : course.reminders)
        stamp.spoken += static_cast<std::size_t>(answer.answer) + 1;
    stamp.day = clock::dayOfRecovery(triage::treatedAt(course), endOf(course, now));
    return stamp;
}

Burden burdenOf(std::span<const CourseTally> courses, clock::Instant now)
{
    Burden burden;
    long closed = 0;
    long lately = 0;
    for (const CourseTally& course : courses) {
        ++burden.courses;
        bool alerted = false;
        for (const AlertTally& alert : course.alerts) {
            if (alert.silence) {
                ++burden.silences;
                continue;
            }
            alerted = true;
            ++burden.alerts;
            ++burden.byUrgency[static_cast<std::size_t>(alert.urgency)];
            burden.open += alert.answer == AlertTally::Answer::open ? 1 : 0;
            burden.atFollowUp += alert.answer == AlertTally::Answer::atFollowUp ? 1 : 0;
            lately += alert.raised <= now && now - alert.raised < std::chrono::weeks(burdenWeeks) ? 1 : 0;
            if (alert.answer == AlertTally::Answer::closed) {
                ++closed;
                ++burden.byOutcome[static_cast<std::size_t>(alert.outcome)];
                burden.worth += alert.worthIt() ? 1 : 0;
            }
        }
        burden.alertedCourses += alerted ? 1 : 0;
    }
    burden.perWeek = static_cast<double>(lately) / burdenWeeks;
    burden.worthShare = learning::shareOf(burden.worth, closed);
    return burden;
}

Adherence adherenceOf(std::span<const CourseTally> courses)
{
    Adherence adherence;
    std::map<InstructionKind, KeptTally> kept;
    for (const CourseTally& course : courses) {
        ++adherence.courses;
        adherence.askedDays += course.askedDays;
        adherence.toldDays += course.toldDays;
        for (const KeptTally& one : course.kept) {
            KeptTally& sum = kept[one.kind];
            sum.kind = one.kind;
            sum.due += one.due;
            sum.done += one.done;
            sum.notDone += one.notDone;
        }
    }
    for (const auto& [kind, one] : kept)
        adherence.kept.push_back(one);
    std::stable_sort(adherence.kept.begin(), adherence.kept.end(), [](const KeptTally& a, const KeptTally& b) { return a.due > b.due; });
    return adherence;
}

PracticeFigures practiceFigures(std::span<const learning::PastCourse> courses)
{
    PracticeFigures figures;
    figures.courses = courses.size();
    if (auto all = learning::complicationShares(courses, learning::By::nothing); !all.empty())
        figures.all = std::move(all.front());
    figures.kinds = learning::complicationKinds(courses);
    figures.zones = learning::complicationShares(courses, learning::By::zone);
    for (const recovery::Symptom symptom : recovery::allSymptoms)
        figures.resolutions.push_back(learning::resolutionOf(courses, symptom));
    if (auto watch = learning::watchPoints(courses, figures.design))
        figures.watch = std::move(*watch);
    for (const learning::Way way : learning::allWays)
        figures.ways[static_cast<std::size_t>(way)] = learning::groupsOf(courses, way);
    figures.lots = learning::traceLots(courses);
    return figures;
}

}  // namespace ebbline::desk
