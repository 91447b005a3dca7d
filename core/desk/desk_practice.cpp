// The clinic's own courses as learning sees them.

#include "core/desk/inside.h"

#include "core/bytes/text.h"
#include "core/rehearsal/taught.h"
#include "core/triage/course_curve.h"

namespace ebbline::desk {

namespace {

learning::PastCourse asPastCourse(const recovery::CourseId& id, const journal::CourseState& state)
{
    const recovery::Treatment& treatment = state.treatment->treatment;
    learning::PastCourse course;
    course.name = bytes::toHex(id.view());
    course.treated = treatment.at;
    course.technique = learning::techniqueOf(treatment);
    course.zones = learning::zonesOf(treatment);
    course.lots = learning::lotsOf(treatment);
    for (const learning::Way way : learning::allWays)
        course.ways[static_cast<std::size_t>(way)] = learning::groupOf(treatment, way);
    if (state.followUp)
        course.outcome = learning::Outcome{!state.followUp->uncomplicated || !state.followUp->complications.empty(),
                                           state.followUp->complications};
    course.days = rehearsal::taughtBy(triage::courseInput(state));
    return course;
}

}  // namespace

std::vector<learning::PastCourse> Desk::pastCourses() const
{
    std::vector<learning::PastCourse> courses;
    for (const auto& [id, state] : m_inside->vault.state().courses)
        if (state.treatment)
            courses.push_back(asPastCourse(id, state));
    return courses;
}

std::vector<recovery::CourseId> Desk::courseIds() const
{
    std::vector<recovery::CourseId> ids;
    for (const auto& [id, state] : m_inside->vault.state().courses)
        ids.push_back(id);
    return ids;
}

std::optional<learning::PastCourse> Desk::pastCourse(const recovery::CourseId& id) const
{
    // A course of which only the phone has spoken so far has no treatment to learn from.
    const journal::CourseState* state = m_inside->course(id);
    return state && state->treatment ? std::optional(asPastCourse(id, *state)) : std::nullopt;
}

std::optional<TallyStamp> Desk::tallyStamp(const recovery::CourseId& id) const
{
    const journal::CourseState* state = m_inside->course(id);
    return state ? std::optional(tallyStampOf(*state, m_inside->now())) : std::nullopt;
}

std::optional<CourseTally> Desk::tally(const recovery::CourseId& id) const
{
    const journal::CourseState* state = m_inside->course(id);
    return state ? tallyOf(id, *state, m_inside->now(), m_inside->zone) : std::nullopt;
}

}  // namespace ebbline::desk
