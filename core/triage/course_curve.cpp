#include "core/triage/course_curve.h"

namespace ebbline::triage {

clock::Moment treatedAt(const journal::CourseState& course)
{
    if (course.opened)
        return course.opened->treated;
    return course.treatment ? course.treatment->treatment.at : clock::Moment{};
}

triggers::CourseInput courseInput(const journal::CourseState& course)
{
    triggers::CourseInput input{treatedAt(course), {}, {}};
    if (course.opened)
        input.baseline = course.opened->baseline;
    else if (course.treatment)
        input.baseline = course.treatment->treatment.baseline;
    for (const auto& [id, history] : course.entries)
        input.observations.push_back({history.current().at, history.current().scores});
    return input;
}

curves::Curve courseCurve(const journal::CourseState& course, const recovery::Stream& stream)
{
    std::vector<curves::Sample> samples;
    for (const auto& [id, history] : course.entries) {
        const recovery::Entry& entry = history.current();
        if (const auto found = entry.scores.find(stream); found != entry.scores.end())
            samples.push_back({entry.at, found->second, entry.isLate(), history.amended()});
    }
    const clock::Moment treated = treatedAt(course);
    if (!course.opened)
        return curves::curveOf(stream, treated, samples, bands::seedBand(), 21);
    return curves::curveOf(stream, treated, samples, course.opened->protocol.band,
                           clock::dayOfRecovery(treated, course.opened->followUp));
}

}  // namespace ebbline::triage
