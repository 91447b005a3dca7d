#include "core/rehearsal/rehearse.h"

#include "core/triggers/course_watch.h"

#include <algorithm>
#include <map>

namespace ebbline::rehearsal {

namespace {

constexpr double dayHours = 24;
constexpr double threeDaysHours = 72;
constexpr double aMinute = 1.0 / 60;  // tables round times to the second
constexpr std::string_view foldsAtFollowUp = "lasting puckering";  // as a desk has it: docs/clinical/complications.md

/// Folds that stay are raised for the review: a note is all that the rules promise there.
bool isOfFolds(const Truth& truth)
{
    return truth.kind == word(Kind::puckering) || truth.kind == word(Kind::worseningFolds) || truth.kind == foldsAtFollowUp;
}

/// A fold is there from the treatment on, and its onset is the day from which it counts as one that stays: told of sooner, it
/// was found. Every other alert before an onset speaks of something else.
bool comesBefore(const triggers::Finding& finding, const Truth& truth)
{
    return truth.onset && finding.raisedAt.at < truth.onset->at
           && !(isOfFolds(truth) && finding.trigger == triggers::Trigger::persistentPuckering);
}

template <typename Row>
void plainFirst(std::vector<Row>& rows)
{
    std::stable_partition(rows.begin(), rows.end(), [](const Row& row) { return row.kind == word(Kind::plain); });
}

/// Everything but the urgency, and the numbers behind it.
bool sameButUrgency(const triggers::Finding& a, const triggers::Finding& b)
{
    return a.raisedAt.at == b.raisedAt.at && a.trigger == b.trigger && a.stream == b.stream
           && triggers::isOverall(a) == triggers::isOverall(b);
}

/// What `one` raised and `other` did not raise so; the first of it is returned.
std::optional<triggers::Finding> notRaisedBy(const std::vector<triggers::Finding>& other, const std::vector<triggers::Finding>& one,
                                             Respects& in)
{
    std::optional<triggers::Finding> first;
    for (const triggers::Finding& finding : one) {
        bool raised = false;
        bool milderOrWorse = false;
        for (const triggers::Finding& each : other)
            if (sameButUrgency(each, finding))
                (each.urgency == finding.urgency ? raised : milderOrWorse) = true;
        if (raised)
            continue;
        if (milderOrWorse)
            in.urgency = true;
        else if (finding.trigger == triggers::Trigger::silence)
            in.silentList = true;
        else
            (finding.urgency == recovery::Urgency::atReview ? in.notes : in.alerts) = true;
        if (!first)
            first = finding;
    }
    return first;
}

/// All findings of a course up to its last evening, and for three days after the onset of a complication that began later. Of
/// one that fell silent it is known that nobody came: it is judged on until the visit that was missed has been told.
std::vector<triggers::Finding> findingsOf(const KnownCourse& course, const triggers::Protocol& protocol, bool fellSilent)
{
    clock::Moment end = endOf(course.input);
    if (!fellSilent) {
        if (course.truth.onset && course.truth.onset->at > end.at)
            end.at = course.truth.onset->at + std::chrono::hours(static_cast<int>(threeDaysHours));
        return triggers::judge(course.input, protocol, end);
    }
    const triggers::Thresholds& limits = protocol.thresholds;
    clock::Moment told = course.input.treated;
    told.at += std::chrono::days(protocol.carePlan.followUpDay + 1 + std::max(limits.silentDays, limits.silentDaysWhenHigh));
    end.at = std::max(end.at, told.at);
    return triggers::judgeArrived(course.input, protocol, end, triggers::Visit::awaited);
}

}  // namespace

CourseVerdict verdictOn(const KnownCourse& course, const triggers::Protocol& protocol)
{
    CourseVerdict verdict;
    verdict.name = course.name;
    verdict.kind = course.truth.kind;
    verdict.timed = course.truth.onset.has_value();
    verdict.sided = course.truth.side != recovery::Side::none;
    const bool fellSilent = course.truth.kind == word(Kind::silent);
    verdict.raised = findingsOf(course, protocol, fellSilent);
    for (const triggers::Finding& finding : verdict.raised) {
        const bool silence = finding.trigger == triggers::Trigger::silence;
        const bool note = finding.urgency == recovery::Urgency::atReview;
        verdict.silent = verdict.silent || silence;
        verdict.reviewNote = verdict.reviewNote || note;
        if (silence != fellSilent || (note && !isOfFolds(course.truth)))
            continue;
        ++verdict.alerts;
        verdict.callNow = verdict.callNow || finding.urgency <= recovery::Urgency::callNow;
        if (!verdict.first)
            verdict.first = finding;
        const auto& onset = course.truth.onset;
        if (comesBefore(finding, course.truth)) {
            verdict.beforeOnset = true;
        } else if (!verdict.sinceOnset) {
            if (onset)
                verdict.delayHours = std::max(0.0, triggers::hoursSince(*onset, finding.raisedAt));
            verdict.rightSide = verdict.sided && finding.stream.side == course.truth.side;
            verdict.sinceOnset = finding;
        }
    }
    return verdict;
}

std::vector<KindFigures> figuresOf(std::span<const CourseVerdict> verdicts)
{
    std::map<std::string, KindFigures> byKind;
    std::map<std::string, std::vector<double>> delays;
    std::map<std::string, std::vector<long>> alerts;
    for (const CourseVerdict& verdict : verdicts) {
        KindFigures& figures = byKind[verdict.kind];
        figures.kind = verdict.kind;
        ++figures.courses;
        const bool flagged = verdict.sinceOnset.has_value();
        const bool day = verdict.delayHours && *verdict.delayHours <= dayHours + aMinute;
        const bool threeDays = verdict.delayHours && *verdict.delayHours <= threeDaysHours + aMinute;
        const bool strict = !verdict.beforeOnset;
        figures.flagged += flagged;
        figures.timed += verdict.timed;
        figures.withinDay += day;
        figures.withinThreeDays += threeDays;
        figures.beforeOnset += verdict.beforeOnset;
        figures.strictFlagged += strict && flagged;
        figures.strictWithinDay += strict && day;
        figures.strictWithinThreeDays += strict && threeDays;
        figures.sided += flagged && verdict.sided;
        figures.rightSide += flagged && verdict.rightSide;
        figures.callNow += verdict.callNow;
        figures.reviewNotes += verdict.reviewNote;
        figures.silent += verdict.silent;
        figures.alerts += verdict.alerts;
        alerts[verdict.kind].push_back(verdict.alerts);
        if (verdict.delayHours)
            delays[verdict.kind].push_back(*verdict.delayHours);
    }
    std::vector<KindFigures> rows;
    for (auto& [kind, figures] : byKind) {
        if (auto found = delays.find(kind); found != delays.end()) {
            auto middle = found->second.begin() + static_cast<std::ptrdiff_t>((found->second.size() - 1) / 2);
            std::nth_element(found->second.begin(), middle, found->second.end());
            figures.medianDelayHours = *middle;
        }
        if (const auto burden = statistics::countRate(alerts[kind]))
            figures.burden = *burden;
        rows.push_back(std::move(figures));
    }
    plainFirst(rows);
    return rows;
}

std::optional<Difference> differenceOf(std::size_t course, const CourseVerdict& before, const CourseVerdict& after)
{
    Difference difference{course, {}, {}, {}};
    difference.before = notRaisedBy(after.raised, before.raised, difference.in);
    difference.after = notRaisedBy(before.raised, after.raised, difference.in);
    return difference.in.any() ? std::optional(std::move(difference)) : std::nullopt;
}

std::vector<KindChange> changesOf(const Rehearsal& rehearsal)
{
    std::map<std::string, KindChange> byKind;
    for (const Difference& difference : rehearsal.differences) {
        KindChange& change = byKind[rehearsal.before[difference.course].kind];
        change.otherAlerts += difference.in.alerts;
        change.otherUrgency += difference.in.urgency;
        change.otherSilentList += difference.in.silentList;
        change.otherNotes += difference.in.notes;
    }
    for (std::size_t i = 0; i < rehearsal.before.size(); ++i) {
        KindChange& change = byKind[rehearsal.before[i].kind];
        const bool first = rehearsal.before[i].sinceOnset.has_value();
        const bool second = rehearsal.after[i].sinceOnset.has_value();
        ++change.courses;
        change.bothFlagged += first && second;
        change.firstOnly += first && !second;
        change.secondOnly += second && !first;
    }
    std::vector<KindChange> rows;
    for (auto& [kind, change] : byKind) {
        change.kind = kind;
        if (const auto moved = statistics::pairedDifference(change.firstOnly, change.secondOnly, change.courses))
            change.flagged = *moved;
        rows.push_back(std::move(change));
    }
    plainFirst(rows);
    return rows;
}

std::optional<statistics::Interval> share(long part, long whole)
{
    const Result<statistics::Interval> interval = statistics::wilson(part, whole);
    return interval ? std::optional(*interval) : std::nullopt;
}

Result<Rehearsal> rehearse(std::span<const KnownCourse> courses, const triggers::Protocol& before,
                           const triggers::Protocol& after)
{
    if (courses.empty())
        return fail(Reason::notEnough, "courses: want at least one");
    Rehearsal rehearsal;
    rehearsal.before.reserve(courses.size());
    rehearsal.after.reserve(courses.size());
    for (std::size_t i = 0; i < courses.size(); ++i) {
        rehearsal.before.push_back(verdictOn(courses[i], before));
        rehearsal.after.push_back(verdictOn(courses[i], after));
        if (auto difference = differenceOf(i, rehearsal.before.back(), rehearsal.after.back()))
            rehearsal.differences.push_back(std::move(*difference));
    }
    return rehearsal;
}

}  // namespace ebbline::rehearsal
