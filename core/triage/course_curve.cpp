#include "core/triage/course_curve.h"

namespace ebbline::triage {

namespace {

std::vector<curves::Sample> samplesOf(const journal::CourseState& course, const recovery::Stream& stream)
{
    std::vector<curves::Sample> samples;
    for (const auto& [id, history] : course.entries) {
        const recovery::Entry& entry = history.current();
        if (const auto found = entry.scores.find(stream); found != entry.scores.end())
            samples.push_back({entry.at, found->second, entry.isLate(), history.amended()});
    }
    return samples;
}

}  // namespace

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
    const std::vector<curves::Sample> samples = samplesOf(course, stream);
    const clock::Moment treated = treatedAt(course);
    if (!course.opened)
        return curves::curveOf(stream, treated, samples, bands::seedBand(), 21);
    return curves::curveOf(stream, treated, samples, course.opened->protocol.band,
                           clock::dayOfRecovery(treated, course.opened->followUp));
}

std::optional<curves::Asymmetry> courseAsymmetry(const journal::CourseState& course, recovery::Symptom symptom)
{
    return curves::asymmetryOf(samplesOf(course, {symptom, recovery::Side::left}),
                               samplesOf(course, {symptom, recovery::Side::right}), treatedAt(course));
}

}  // namespace ebbline::triage
