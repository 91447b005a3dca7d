#include "core/triage/queue.h"

#include "core/triage/course_curve.h"

#include <algorithm>

namespace ebbline::triage {

namespace {

bool isSilence(const Finding& finding)
{
    const auto* trigger = std::get_if<triggers::Finding>(&finding.what);
    return trigger && trigger->trigger == triggers::Trigger::silence;
}

/// A sign that was told stands before what was reckoned, and silence, which tells of nothing, last.
int rankOf(const Finding& finding)
{
    return finding.entry ? 0 : isSilence(finding) ? 2 : 1;
}

/// When the day is over that a visit was brought forward to by this act, or an earlier one of those that were agreed since: who puts
/// a visit off again has said nothing of what it was brought forward for. Empty where no day went on record with the act.
std::optional<clock::Instant> endOfVisit(const records::FindingActed& act, const journal::CourseState& course)
{
    std::optional<clock::Instant> end;
    for (std::size_t i = 1; i < course.visits.size(); ++i) {
        const auto& [visit, operation, entered] = course.visits[i];
        if (entered.at < act.at.at)
            continue;
        const clock::Instant over = visit.at - std::chrono::minutes(visit.minuteOfDay()) + std::chrono::days(1);
        end = end ? std::min(*end, over) : over;
    }
    return end;
}

/// Up to when an act answers for a finding of that urgency that nobody closed; empty if it does not at all.
std::optional<clock::Instant> coveredUntil(const records::FindingActed& act, recovery::Urgency urgency, const journal::CourseState& course)
{
    const clock::Instant taken = act.at.at + untouchedFor(urgency);
    const clock::Instant spoken = act.at.at + spokenFor(urgency);
    switch (act.act) {
    case records::Act::taken: return taken;
    case records::Act::called:
        // A call that reached nobody tells nobody anything.
        return act.outcome == records::Outcome::notReached ? std::nullopt : std::optional(spoken);
    case records::Act::visitBroughtForward: {
        const auto over = endOfVisit(act, course);
        // No visit on another day answers for an emergency.
        if (!over || urgency == recovery::Urgency::emergency)
            return spoken;
        return std::max(*over, taken);
    }
    default: return std::nullopt;
    }
}

/// Of the most urgent findings alone: who took a milder one has not seen what came after it.
void tellWhoIsOnIt(Row& row, const journal::CourseState& course)
{
    row.touched = true;
    bool taken = true;
    bool acted = true;
    std::optional<clock::Instant> overdueAt;
    const auto milder = std::ranges::find_if(row.findings, [&](const Finding& finding) { return finding.urgency != row.urgency; });
    const std::span<const Finding> mostUrgent(row.findings.begin(), milder);
    for (const Finding& finding : mostUrgent) {
        bool touched = false;
        bool takenHere = false;
        clock::Instant waitsUntil = finding.raisedAt.at + untouchedFor(row.urgency);
        for (const records::FindingActed& act : finding.acts) {
            if (const auto until = coveredUntil(act, row.urgency, course)) {
                touched = true;
                waitsUntil = std::max(waitsUntil, *until);
            }
            if (act.act != records::Act::taken)
                continue;
            takenHere = true;
            if (!row.takenBy || act.at.at >= row.takenAt.at) {
                row.takenBy = act.by;
                row.takenAt = act.at;
            }
        }
        if (!touched && (row.touched || finding.raisedAt.at < row.untouchedSince.at))
            row.untouchedSince = finding.raisedAt;
        row.touched = row.touched && touched;
        taken = taken && takenHere;
        acted = acted && newestAct({&finding, 1});
        overdueAt = overdueAt ? std::min(*overdueAt, waitsUntil) : waitsUntil;
    }
    row.overdueAt = *overdueAt;
    if (!taken)
        row.takenBy.reset();
    if (acted)
        row.lastAct = newestAct(mostUrgent);
}

/// Nothing was said after the follow-up, all that was said before it lay open by then, and nobody reopened anything since:
/// it answered for everything.
bool isOver(const journal::CourseState& course)
{
    if (!course.followUp)
        return false;
    for (std::size_t i = 0; i < course.acts.size(); ++i)
        if (course.acts[i].act == records::Act::reopened && !course.takenBack(i) && course.acts[i].at.at > course.followUp->at.at)
            return false;
    for (const auto& [id, history] : course.entries)
        for (std::size_t number = 0; number < history.versions.size(); ++number) {
            const journal::Opening* opening = course.opening(history, number);
            if (history.versions[number].value.at.at > course.followUp->at.at || !opening
                || opening->at.at > course.followUp->at.at)
                return false;
        }
    return true;
}

}  // namespace

bool isVisitOfLongAgo(const Row& row, const clock::Moment& now)
{
    const auto missedLongAgo = [&](const Finding& finding) {
        const auto* trigger = std::get_if<triggers::Finding>(&finding.what);
        return trigger != nullptr && trigger->trigger == triggers::Trigger::silence && trigger->numbers.contains("visit") && finding.acts.empty()
               && now.at - finding.raisedAt.at >= visitOfLongAgo;
    };
    return !row.heardSince && !row.findings.empty() && std::all_of(row.findings.begin(), row.findings.end(), missedLongAgo);
}

bool isOverdue(const Row& row, const clock::Moment& now)
{
    return now.at > row.overdueAt;
}

std::optional<records::FindingActed> newestAct(std::span<const Finding> findings)
{
    std::optional<records::FindingActed> newest;
    for (const Finding& finding : findings)
        for (const records::FindingActed& act : finding.acts) {
            const bool isOn = act.act == records::Act::taken || act.act == records::Act::called || act.act == records::Act::visitBroughtForward;
            if (isOn && (!newest || act.at.at >= newest->at.at))
                newest = act;
        }
    return newest;
}

void sortByUrgency(std::vector<Finding>& findings)
{
    std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
        if (a.urgency != b.urgency)
            return a.urgency < b.urgency;
        return rankOf(a) != rankOf(b) ? rankOf(a) < rankOf(b) : a.raisedAt.at > b.raisedAt.at;
    });
}

namespace {

/// Empty if nothing is open.
std::optional<Row> judgedRow(const recovery::CourseId& id, const journal::CourseState& course, const clock::Moment& now)
{
    if (isOver(course))
        return std::nullopt;
    std::vector<Finding> open = findingsOf(course, now);
    std::erase_if(open, [](const Finding& finding) { return !finding.open; });
    if (open.empty())
        return std::nullopt;
    sortByUrgency(open);
    Row row;
    row.course = id;
    row.urgency = open.front().urgency;
    row.since = open.front().raisedAt;
    for (const Finding& finding : open)
        if (finding.urgency == row.urgency && finding.raisedAt.at < row.since.at)
            row.since = finding.raisedAt;
    row.heardSince = std::ranges::any_of(course.entries, [&](const auto& entry) { return entry.second.current().at.at > row.since.at; });
    row.silent = std::all_of(open.begin(), open.end(), isSilence);
    row.findings = std::move(open);
    tellWhoIsOnIt(row, course);
    return row;
}

}  // namespace

std::optional<Row> SettledCourses::rowOf(const recovery::CourseId& id, const journal::CourseState& course, const clock::Moment& now)
{
    const bool settled = course.followUp && course.followUp->at.at < now.at;
    std::optional<Row> row;
    if (const auto known = m_known.find(id); settled && known != m_known.end() && known->second.revision == course.revision) {
        row = known->second.row;
    } else {
        row = judgedRow(id, course, now);
        if (settled)
            m_known.insert_or_assign(id, Known{course.revision, row});
    }
    if (row)
        row->day = std::max(0, clock::dayOfRecovery(treatedAt(course), now));
    return row;
}

std::vector<Row> queueOf(const journal::State& state, const clock::Moment& now)
{
    SettledCourses settled;
    return queueOf(state, now, settled);
}

std::vector<Row> queueOf(const journal::State& state, const clock::Moment& now, SettledCourses& settled)
{
    std::vector<Row> rows;
    for (const auto& [id, course] : state.courses)
        if (auto row = settled.rowOf(id, course, now))
            rows.push_back(std::move(*row));
    std::stable_sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) {
        if (a.urgency != b.urgency)
            return a.urgency < b.urgency;
        if (a.silent != b.silent)
            return b.silent;
        return a.since.at < b.since.at;
    });
    return rows;
}

}  // namespace ebbline::triage
