#include "core/triage/queue.h"

#include "core/triage/course_curve.h"

#include "core/bytes/text.h"

#include <algorithm>
#include <iterator>

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

/// Every version of an entry is judged: correcting an entry does not take a warning back. What has
/// arrived is judged whatever the clocks say: one that runs ahead, or behind, delays no warning.
void addWarnings(std::vector<Finding>& findings, const journal::CourseState& course, const clock::Moment& treated)
{
    for (const auto& [id, history] : course.entries) {
        std::map<std::string, Finding> byKey;
        for (const auto& version : history.versions) {
            for (const warnings::Finding& warning : warnings::judge(version.value, {.treated = treated})) {
                Finding finding{keyOf(warning, id), warning.urgency, warning, id, version.value.at,
                                std::max(0, clock::dayOfRecovery(treated, version.value.at)), {}, true};
                const auto [place, fresh] = byKey.try_emplace(finding.key, finding);
                if (!fresh && finding.urgency < place->second.urgency)
                    place->second = std::move(finding);
            }
        }
        const auto stands = history.amended() ? warnings::judge(history.current(), {.treated = treated})
                                              : std::vector<warnings::Finding>{};
        for (auto& [key, finding] : byKey)
            finding.changedSince = history.amended() && std::ranges::none_of(stands, [&](const warnings::Finding& warning) {
                return keyOf(warning, id) == key && warning.urgency <= finding.urgency;
            });
        for (auto& [key, finding] : byKey)
            findings.push_back(std::move(finding));
    }
}

/// What triggers raised on one input, in front of the follow-up: after it nobody expects entries any more.
std::vector<Finding> triggered(triggers::CourseInput input, const journal::CourseState& course, const clock::Moment& now)
{
    clock::Moment until = now;
    if (course.followUp && course.followUp->at.at < now.at) {
        until = course.followUp->at;
        std::erase_if(input.observations, [&](const triggers::Observation& o) { return o.at.at > until.at; });
    }
    std::vector<Finding> findings;
    for (const triggers::Finding& finding : triggers::judgeArrived(input, course.opened->protocol, until))
        findings.push_back({keyOf(finding), finding.urgency, finding, {}, finding.raisedAt, finding.day, {}, true});
    return findings;
}

/// What stood once is judged too, as it was known then: what it raised stays. Of one key the most urgent
/// reading counts.
/// \pre course.opened
void addTriggers(std::vector<Finding>& findings, const journal::CourseState& course, const clock::Moment& now)
{
    std::vector<Finding> raised = triggered(courseInput(course), course, now);
    for (triggers::CourseInput& input : earlierInputs(course))
        for (Finding& earlier : triggered(std::move(input), course, now)) {
            if (std::get<triggers::Finding>(earlier.what).trigger == triggers::Trigger::silence)
                continue;
            const auto same = [&](const Finding& finding) { return finding.key == earlier.key; };
            if (std::ranges::any_of(raised, [&](const Finding& finding) { return same(finding) && finding.urgency <= earlier.urgency; }))
                continue;
            std::erase_if(raised, same);
            earlier.changedSince = true;
            raised.push_back(std::move(earlier));
        }
    std::ranges::move(raised, std::back_inserter(findings));
}

void addActs(std::vector<Finding>& findings, const journal::CourseState& course)
{
    for (Finding& finding : findings) {
        for (const records::FindingActed& act : course.acts) {
            if (act.finding != finding.key)
                continue;
            finding.acts.push_back(act);
            if (act.act == records::Act::closed)
                finding.open = false;
            else if (act.act == records::Act::reopened)
                finding.open = true;
        }
        // The follow-up answers for what it had in front of it.
        if (course.followUp && finding.raisedAt.at <= course.followUp->at.at)
            finding.open = false;
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
