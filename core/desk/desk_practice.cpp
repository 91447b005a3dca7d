// The clinic's own courses as learning sees them.

#include "core/desk/inside.h"

#include "core/bytes/text.h"
#include "core/rehearsal/taught.h"
#include "core/triage/course_curve.h"

namespace ebbline::desk {

std::vector<learning::PastCourse> Desk::pastCourses() const
{
    std::vector<learning::PastCourse> courses;
    for (const auto& [id, state] : m_inside->vault.state().courses) {
        // A course of which only the phone has spoken so far has no treatment to learn from.
        if (!state.treatment)
            continue;
        const recovery::Treatment& treatment = state.treatment->treatment;
        learning::PastCourse course;
        course.name = bytes::toHex(id.view());
        course.treated = treatment.at;
        course.technique = learning::techniqueOf(treatment);
        course.zones = learning::zonesOf(treatment);
        course.lots = learning::lotsOf(treatment);
        if (state.followUp)
            course.outcome = learning::Outcome{!state.followUp->uncomplicated || !state.followUp->complications.empty(),
                                               state.followUp->complications};
        course.days = rehearsal::taughtBy(triage::courseInput(state));
        courses.push_back(std::move(course));
    }
    return courses;
}

}  // namespace ebbline::desk
