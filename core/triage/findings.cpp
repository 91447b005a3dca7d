#include "core/triage/queue.h"

#include "core/triage/course_curve.h"

#include "core/aftercare/visit.h"
#include "core/bytes/text.h"

#include <algorithm>

namespace ebbline::triage {

namespace {

std::string keyOf(const warnings::Finding& finding, const recovery::EntryId& entry)
{
    return "w/" + finding.rule + "/" + std::string(recovery::word(finding.side)) + "/" + bytes::toHex(entry.view());
}

std::string keyOf(const triggers::Finding& finding)
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

bool openedByFollowUp(const journal::CourseState& course, const triggers::Finding& finding)
{
    if (finding.trigger == triggers::Trigger::silence)
        return true;
    return std::any_of(course.entries.begin(), course.entries.end(), [&](const auto& entry) {
        const journal::EntryHistory& history = entry.second;
        return history.current().at.at == finding.raisedAt.at && openedByFollowUp(course, history, history.versions.size() - 1);
    });
}

/// Every version of an entry is judged: correcting an entry does not take a warning back. What has
/// arrived is judged whatever the clocks say: one that runs ahead, or behind, delays no warning.
void addWarnings(std::vector<Finding>& findings, const journal::CourseState& course, const clock::Moment& treated)
{
    for (const auto& [id, history] : course.entries) {
        std::map<std::string, Finding> byKey;
        for (std::size_t number = 0; number < history.versions.size(); ++number) {
            const auto& version = history.versions[number];
            for (const warnings::Finding& warning : warnings::judge(version.value, {.treated = treated})) {
                Finding finding{keyOf(warning, id), warning.urgency, warning, id, version.value.at,
                                std::max(0, clock::dayOfRecovery(treated, version.value.at)), {}, true};
                finding.openedByFollowUp = openedByFollowUp(course, history, number);
                const auto [place, fresh] = byKey.try_emplace(finding.key, finding);
                if (!fresh && finding.urgency < place->second.urgency)
                    place->second = std::move(finding);
            }
        }
        for (auto& [key, finding] : byKey)
            findings.push_back(std::move(finding));
    }
}

/// \pre the course is opened
void addTriggers(std::vector<Finding>& findings, const journal::CourseState& course, const clock::Moment& now)
{
    triggers::CourseInput input = courseInput(course);
    triggers::Protocol protocol = course.opened->protocol;
    protocol.carePlan = aftercare::planFor(protocol.carePlan, input.treated, aftercare::visitOf(course.opened->followUp));
    // After the follow-up nobody expects entries any more.
    clock::Moment until = now;
    if (course.followUp && course.followUp->at.at < now.at) {
        until = course.followUp->at;
        std::erase_if(input.observations, [&](const triggers::Observation& o) { return o.at.at > until.at; });
    }
    for (const triggers::Finding& finding : triggers::judgeArrived(input, protocol, until)) {
        findings.push_back({keyOf(finding), finding.urgency, finding, {}, finding.raisedAt, finding.day, {}, true});
        findings.back().openedByFollowUp = openedByFollowUp(course, finding);
    }
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

void addActs(std::vector<Finding>& findings, const journal::CourseState& course)
{
    for (Finding& finding : findings) {
        std::copy_if(course.acts.begin(), course.acts.end(), std::back_inserter(finding.acts),
                     [&](const records::FindingActed& act) { return act.finding == finding.key; });
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

std::string explain(const Finding& finding)
{
    if (const auto* trigger = std::get_if<triggers::Finding>(&finding.what))
        return triggers::explain(*trigger);
    const auto& warning = std::get<warnings::Finding>(finding.what);
    std::string text = warning.rule + " on day " + std::to_string(finding.day) + ": ";
    for (std::size_t i = 0; i < warning.reasons.size(); ++i)
        text += (i > 0 ? ", " : "") + warning.reasons[i];
    if (warning.side != recovery::Side::none)
        text += warning.side == recovery::Side::left ? " (left)" : " (right)";
    return text;
}

}  // namespace ebbline::triage
