#include "core/sync/looking_back.h"

#include "core/sync/least_version.h"
#include "core/sync/refusals.h"

namespace ebbline::sync {

namespace {

bool isClosed(const vault::Vault& vault, const vault::Link& link)
{
    const auto& courses = vault.state().courses;
    const auto course = courses.find(link.course);
    return course != courses.end() && course->second.followUp.has_value();
}

}  // namespace

bool isOver(clock::Instant since, std::chrono::milliseconds limit, clock::Instant now)
{
    return now - since > limit || since - now > limit;
}

void lookBack(const vault::Vault& vault, Report& report)
{
    const clock::Instant now = vault.clock().now();
    const auto links = vault.links();
    for (const vault::Link& link : links ? *links : std::vector<vault::Link>{}) {
        if (link.ended)
            continue;
        report.tooOld = report.tooOld || isTooOld(vault, link.clinicRoot);
        const auto standing = vault.standing(link.mailbox);
        if (!standing)
            continue;
        report.rolledBack = report.rolledBack || standing->rolledBack;
        report.unproved += standing->unprovedSince && isOver(*standing->unprovedSince, longestSilence, now) ? 1 : 0;
        const auto last = standing->heardAt ? standing->heardAt : standing->spokeAt;
        report.silent += last && !isClosed(vault, link) && isOver(*last, longestSilence, now) ? 1 : 0;
    }
    const auto refused = refusals(vault);
    report.refused = refused ? refused->size() : 0;
}

}  // namespace ebbline::sync
