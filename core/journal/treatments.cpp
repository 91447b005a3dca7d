#include "core/journal/treatments.h"

#include <algorithm>

namespace ebbline::journal {

namespace {

/// The same course once more, with another day of the visit.
bool movesTheVisit(records::CourseOpened before, const records::CourseOpened& after)
{
    if (before.followUp == after.followUp)
        return false;
    before.followUp = after.followUp;
    before.practitioner = after.practitioner;
    return before == after;
}

/// It held until then, and does not again: somebody whose clock runs behind wrote it anew already.
/// \pre course.opened
void takeReplaced(CourseState& course, const records::CourseOpened& body, const Operation& operation)
{
    const records::CourseOpened& holds = *course.opened;
    if (holds.followUp != body.followUp)
        course.visits.insert(course.visits.end() - 1, Visit{body.followUp, operation.id, operation.entered});
    if (holds.followUp != body.followUp || holds.treated != body.treated || holds.protocol.carePlan != body.protocol.carePlan)
        ++course.planChanges;
    if (holds.treated != body.treated || holds.baseline != body.baseline)
        course.formerCounts.push_back({body.treated, body.baseline, operation.stamp});
}

}  // namespace

void takeTreatment(CourseState& course, records::TreatmentRecorded& body, const Operation& operation)
{
    auto& all = course.treatmentVersions;
    // Before whatever somebody wrote in its place: a clock that runs ahead lets no record hold over its correction.
    const auto successor = std::ranges::find_if(all, [&](const auto& version) { return version.supersedes == operation.id; });
    all.insert(successor, Version<records::TreatmentRecorded>{std::move(body), operation.id, operation.entered, operation.stamp, operation.supersedes});
    course.treatment = all.back().value;
}

void takeOpening(CourseState& course, records::CourseOpened& body, const Operation& operation)
{
    if (operation.supersedes)
        course.openingsReplaced.insert(*operation.supersedes);
    if (course.opened && course.openingsReplaced.contains(operation.id))
        return takeReplaced(course, body, operation);
    if (!course.opened || !movesTheVisit(*course.opened, body))
        course.openedAt = operation.entered;
    if (!course.opened || course.opened->followUp != body.followUp)
        course.visits.push_back({body.followUp, operation.id, operation.entered});
    if (course.opened && (course.opened->followUp != body.followUp || course.opened->treated != body.treated
                          || course.opened->protocol.carePlan != body.protocol.carePlan))
        ++course.planChanges;
    if (course.opened && (course.opened->treated != body.treated || course.opened->baseline != body.baseline))
        course.formerCounts.push_back({course.opened->treated, course.opened->baseline, operation.stamp});
    course.opened = std::move(body);
    course.openedOperation = operation.id;
}

}  // namespace ebbline::journal
