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

/// Whoever took one of the open findings last.
std::optional<std::string> takenBy(const std::vector<Finding>& findings)
{
    const records::FindingActed* last = nullptr;
    for (const Finding& finding : findings)
        for (const records::FindingActed& act : finding.acts)
            if (act.act == records::Act::taken && (!last || act.at.at >= last->at.at))
                last = &act;
    return last ? std::optional(last->by) : std::nullopt;
}

}  // namespace

std::vector<Row> queueOf(const journal::State& state, const clock::Moment& now)
{
    std::vector<Row> rows;
    for (const auto& [id, course] : state.courses) {
        std::vector<Finding> open = findingsOf(course, now);
        std::erase_if(open, [](const Finding& finding) { return !finding.open; });
        if (open.empty())
            continue;
        std::stable_sort(open.begin(), open.end(), [](const Finding& a, const Finding& b) {
            return a.urgency != b.urgency ? a.urgency < b.urgency : a.raisedAt.at < b.raisedAt.at;
        });
        Row row;
        row.course = id;
        row.urgency = open.front().urgency;
        row.since = open.front().raisedAt;
        row.silent = std::all_of(open.begin(), open.end(), isSilence);
        row.takenBy = takenBy(open);
        row.day = std::max(0, clock::dayOfRecovery(treatedAt(course), now));
        row.findings = std::move(open);
        rows.push_back(std::move(row));
    }
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
