#include "core/triage/queue.h"

#include "core/triage/course_curve.h"

#include "core/aftercare/visit.h"
#include "core/bytes/text.h"
#include "core/crypto/crypto.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <set>

namespace ebbline::triage {

namespace {

std::string subjectOf(const warnings::Finding& finding, const recovery::EntryId& entry)
{
    return "w/" + finding.rule + "/" + std::string(recovery::word(finding.side)) + "/" + bytes::toHex(entry.view());
}

std::string subjectOf(const triggers::Finding& finding)
{
    return "t/" + std::string(triggers::word(finding.trigger)) + "/"
           + std::string(recovery::word(finding.stream.symptom)) + "/"
           + std::string(recovery::word(finding.stream.side)) + "/" + std::to_string(finding.day);
}

bool byFollowUp(const journal::CourseState& course, const clock::Moment& at)
{
    return course.followUp && at.at <= course.followUp->at.at;
}

/// Somebody had opened this version by the follow-up.
bool openedByFollowUp(const journal::CourseState& course, const journal::EntryHistory& history, std::size_t version)
{
    const journal::Opening* opening = course.opening(history, version);
    return opening && byFollowUp(course, opening->at);
}

/// The same of what raised a trigger's finding: an entry as it stands now or, of what was changed since, as it stood.
bool openedByFollowUp(const journal::CourseState& course, const triggers::Finding& finding, bool changedSince)
{
    if (finding.trigger == triggers::Trigger::silence)
        return true;
    for (const auto& [id, history] : course.entries)
        for (std::size_t number = changedSince ? 0 : history.versions.size() - 1; number < history.versions.size(); ++number)
            if (history.versions[number].value.at.at == finding.raisedAt.at && openedByFollowUp(course, history, number))
                return true;
    return false;
}

/// What an act names. A worse finding of the same subject has another key, so that an act speaks of what its
/// author had in sight (docs/decisions/0025-acts-name-what-stood.md).
std::string keyOf(const std::string& subject, const warnings::Finding& finding, std::string_view decimalSign = ".")
{
    std::string said;
    for (std::string reason : finding.reasons) {
        if (const auto point = reason.find('.'); point != std::string::npos)
            reason.replace(point, 1, decimalSign);
        said += reason + "\n";
    }
    return subject + "/" + std::string(recovery::word(finding.urgency)) + "/"
           + bytes::toHex(bytes::View(crypto::hash256(bytes::viewOf(said))).first(8));
}

/// What stood for the point in the key of a fever where the system's locale had another: the comma, and Arabic's own.
constexpr std::array<std::string_view, 2> otherDecimalSigns{",", "\u066B"};

std::string keyOf(const std::string& subject, const triggers::Finding& finding)
{
    return subject + "/" + std::string(recovery::word(finding.urgency)) + "/"
           + std::to_string(finding.raisedAt.at.time_since_epoch().count());
}

/// From when the course may have been counted for a version of an entry: as it holds, then by what was corrected later.
std::vector<clock::Moment> countedFrom(const journal::CourseState& course, const journal::Version<recovery::Entry>& version, const clock::Moment& treated)
{
    std::vector<clock::Moment> all{treated};
    for (const journal::FormerCount& count : course.formerCounts)
        if (mayHaveCounted(course, count, version))
            all.push_back(count.treated);
    return all;
}

/// Every version of an entry is judged, by each day the course was counted from since: correcting an entry, or the day of the
/// treatment, does not take a warning back. What has
/// arrived is judged whatever the clocks say: one that runs ahead, or behind, delays no warning.
void addWarnings(std::vector<Finding>& findings, const journal::CourseState& course, const clock::Moment& treated)
{
    for (const auto& [id, history] : course.entries) {
        std::map<std::string, Finding> bySubject;
        for (std::size_t number = 0; number < history.versions.size(); ++number) {
            const auto& version = history.versions[number];
            for (const clock::Moment& from : countedFrom(course, version, treated))
                for (const warnings::Finding& warning : warnings::judge(version.value, {.treated = from})) {
                    const std::string subject = subjectOf(warning, id);
                    const auto known = bySubject.find(subject);
                    if (known != bySubject.end() && !warnings::isWorse(warning, std::get<warnings::Finding>(known->second.what)))
                        continue;
                    Finding finding{keyOf(subject, warning), subject, known == bySubject.end(), warning.urgency, warning, id,
                                    version.value.at, std::max(0, clock::dayOfRecovery(from, version.value.at)), {}, true};
                    finding.openedByFollowUp = openedByFollowUp(course, history, number);
                    finding.recounted = from != treated;
                    bySubject.insert_or_assign(subject, std::move(finding));
                }
        }
        const bool changed = history.amended() || !course.formerCounts.empty();
        const auto stands = changed ? warnings::judge(history.current(), {.treated = treated}) : std::vector<warnings::Finding>{};
        for (auto& [subject, finding] : bySubject)
            finding.changedSince = changed && std::ranges::none_of(stands, [&](const warnings::Finding& warning) {
                return subjectOf(warning, id) == subject && warning.urgency <= finding.urgency;
            });
        for (auto& [subject, finding] : bySubject)
            finding.recounted = finding.recounted && finding.changedSince;
        for (auto& [subject, finding] : bySubject)
            findings.push_back(std::move(finding));
    }
}

/// What triggers raised on one input, oldest first. After the follow-up nobody expects entries any more, and no silence is
/// told; what somebody writes all the same is judged, as her phone does, which is not told of the follow-up, and what asks
/// for a call stands. The visit is awaited up to then, on the day that was agreed last: at the clinic, which holds the record
/// of the treatment; a phone knows of no visit that was missed.
std::vector<triggers::Finding> triggered(const triggers::CourseInput& input, const journal::CourseState& course, const clock::Moment& now)
{
    triggers::Protocol protocol = course.opened->protocol;
    protocol.carePlan = aftercare::planFor(protocol.carePlan, input.treated, aftercare::visitOf(course.opened->followUp));
    const bool over = course.followUp && course.followUp->at.at < now.at;
    auto findings = triggers::judgeArrived(input, protocol, over ? course.followUp->at : now,
                                           course.treatment ? triggers::Visit::awaited : triggers::Visit::unknown);
    if (over)
        std::erase_if(findings, [&](const triggers::Finding& finding) {
            return finding.raisedAt.at > course.followUp->at.at && finding.urgency > recovery::Urgency::callNow;
        });
    return findings;
}

/// One stream's trigger at one moment is one finding, by whichever day it is counted.
bool isSame(const triggers::Finding& a, const triggers::Finding& b)
{
    return a.trigger == b.trigger && a.stream == b.stream && a.raisedAt.at == b.raisedAt.at;
}

/// What stood once is judged too, as it was known then: what it raised stays. Of one subject at one moment the most
/// urgent reading counts.
/// \pre course.opened
void addTriggers(std::vector<Finding>& findings, const journal::CourseState& course, const clock::Moment& now)
{
    std::vector<Finding> raised;
    const auto add = [&](const triggers::Finding& finding, bool changedSince) {
        const std::string subject = subjectOf(finding);
        raised.push_back({keyOf(subject, finding), subject, true, finding.urgency, finding, {}, finding.raisedAt, finding.day, {}, true});
        raised.back().changedSince = changedSince;
        raised.back().openedByFollowUp = openedByFollowUp(course, finding, changedSince);
    };
    const triggers::CourseInput holds = courseInput(course);
    for (const triggers::Finding& finding : triggered(holds, course, now))
        add(finding, false);
    for (const triggers::CourseInput& input : earlierInputs(course)) {
        const bool otherwise = input.treated != holds.treated || input.baseline != holds.baseline;
        // The same answers by the count that holds: what these raise too is not the day's doing.
        const auto by = otherwise ? triggered({holds.treated, holds.baseline, input.observations}, course, now) : std::vector<triggers::Finding>{};
        for (const triggers::Finding& earlier : triggered(input, course, now)) {
            if (earlier.trigger == triggers::Trigger::silence)
                continue;
            const auto same = [&](const Finding& finding) { return isSame(std::get<triggers::Finding>(finding.what), earlier); };
            const auto stands = std::ranges::find_if(raised, [&](const Finding& finding) { return same(finding) && finding.urgency <= earlier.urgency; });
            if (stands != raised.end()) {
                if (stands->subject != subjectOf(earlier))
                    stands->keysBefore.insert(keyOf(subjectOf(earlier), earlier));
                continue;
            }
            std::set<std::string> before;
            for (const Finding& milder : raised)
                if (same(milder)) {
                    before.insert(milder.keysBefore.begin(), milder.keysBefore.end());
                    // An act on what was milder by the same day speaks of that alone.
                    if (milder.subject != subjectOf(earlier))
                        before.insert(milder.key);
                }
            std::erase_if(raised, same);
            add(earlier, true);
            raised.back().keysBefore = std::move(before);
            raised.back().recounted = otherwise && std::ranges::none_of(by, [&](const triggers::Finding& finding) {
                return isSame(finding, earlier) && finding.urgency <= earlier.urgency;
            });
        }
    }
    std::ranges::stable_sort(raised, {}, [](const Finding& finding) { return finding.raisedAt.at; });
    std::set<std::string> subjects;  // the first of a subject is the one that was raised first
    for (Finding& finding : raised)
        finding.firstOfSubject = subjects.insert(finding.subject).second;
    std::ranges::move(raised, std::back_inserter(findings));
}

/// The follow-up answers for what it had in front of it. What asks for a call is answered only if somebody had opened
/// the entry, or acted, by then: it may have been on its way.
bool answeredAtFollowUp(const Finding& finding, const journal::CourseState& course)
{
    return byFollowUp(course, finding.raisedAt)
           && (finding.urgency > recovery::Urgency::callNow || finding.openedByFollowUp
               || std::any_of(finding.acts.begin(), finding.acts.end(),
                              [&](const records::FindingActed& act) { return byFollowUp(course, act.at); }));
}

/// Whether an act speaks of a finding. An older program named the subject alone, and its author may have had no
/// more in sight than what was raised first under it, by then.
bool speaksOf(const records::FindingActed& act, const Finding& finding)
{
    if (isKeyOf(act.finding, finding))
        return true;
    return act.finding == finding.subject && finding.firstOfSubject && (finding.entry || finding.raisedAt.at <= act.at.at);
}

void addActs(std::vector<Finding>& findings, const journal::CourseState& course)
{
    for (Finding& finding : findings) {
        for (std::size_t i = 0; i < course.acts.size(); ++i) {
            const records::FindingActed& act = course.acts[i];
            if (course.takenBack(i))
                continue;
            if (speaksOf(act, finding))
                finding.acts.push_back(act);
            else if ((finding.entry && act.finding.starts_with(finding.subject)) || finding.keysBefore.contains(act.finding))
                finding.actsBefore.push_back(act);
        }
        const bool answered = answeredAtFollowUp(finding, course);
        finding.open = !answered;
        for (const records::FindingActed& act : finding.acts) {
            if (act.act == records::Act::closed)
                finding.open = false;
            else if (act.act == records::Act::reopened)
                finding.open = !answered || !byFollowUp(course, act.at);
        }
    }
}

}  // namespace

std::vector<Finding> findingsOf(const journal::CourseState& course, const clock::Moment& now)
{
    std::vector<Finding> findings;
    if (!course.opened && !course.treatment)
        return findings;
    const clock::Moment treated = treatedAt(course);
    addWarnings(findings, course, treated);
    // Nobody is silent before the phone and the clinic have met.
    if (course.opened)
        addTriggers(findings, course, now);
    addActs(findings, course);
    std::stable_sort(findings.begin(), findings.end(),
                     [](const Finding& a, const Finding& b) { return a.raisedAt.at > b.raisedAt.at; });
    return findings;
}

bool isKeyOf(std::string_view key, const Finding& finding)
{
    if (key == finding.key)
        return true;
    const auto* warning = std::get_if<warnings::Finding>(&finding.what);
    return warning && key.starts_with(finding.subject)
           && std::ranges::any_of(otherDecimalSigns, [&](std::string_view sign) { return keyOf(finding.subject, *warning, sign) == key; });
}

bool namesSilence(std::string_view key)
{
    return key.starts_with("t/" + std::string(triggers::word(triggers::Trigger::silence)) + "/");
}

std::string explain(const Finding& finding)
{
    const char* const since = finding.changedSince ? "; corrected or added to since" : "";
    if (const auto* trigger = std::get_if<triggers::Finding>(&finding.what))
        return triggers::explain(*trigger) + since;
    const auto& warning = std::get<warnings::Finding>(finding.what);
    std::string text = warning.rule + " on day " + std::to_string(finding.day) + ": ";
    for (std::size_t i = 0; i < warning.reasons.size(); ++i)
        text += (i > 0 ? ", " : "") + warning.reasons[i];
    if (warning.side != recovery::Side::none)
        text += warning.side == recovery::Side::left ? " (left)" : " (right)";
    return text + since;
}

}  // namespace ebbline::triage
