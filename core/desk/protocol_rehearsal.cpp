#include "core/desk/protocol_rehearsal.h"

#include "core/desk/practice.h"

#include <algorithm>

namespace ebbline::desk {

namespace {

using rehearsal::Kind;
using rehearsal::KnownCourse;

std::vector<KnownCourse> inventedCourses(rehearsal::Model model)
{
    const rehearsal::Invention invention{model, rehearsal::Rhythm::plan, 23};
    std::vector<KnownCourse> courses;
    for (const Kind kind : rehearsal::allKinds)
        for (int number = 0; number < (kind == Kind::plain ? inventedPlain : inventedTroubled); ++number)
            courses.push_back(rehearsal::invent(invention, kind, number));
    return courses;
}

long alertsOf(const std::vector<rehearsal::CourseVerdict>& verdicts)
{
    long alerts = 0;
    for (const rehearsal::CourseVerdict& verdict : verdicts)
        alerts += verdict.alerts;
    return alerts;
}

}  // namespace

Result<ProtocolRehearsal> rehearseProtocol(const RehearsalMaterial& material, const triggers::Protocol& before,
                                           const triggers::Protocol& after, const std::function<bool(double)>& progress)
{
    std::array<std::vector<KnownCourse>, inventedModels.size()> invented;
    ProtocolRehearsal result;
    result.pastCourses = material.past.size();
    for (std::size_t model = 0; model < inventedModels.size(); ++model) {
        invented[model] = inventedCourses(inventedModels[model]);
        result.inventedCourses += invented[model].size();
    }
    const double whole = static_cast<double>(2 * (result.pastCourses + result.inventedCourses));
    double done = 0;
    bool stopped = false;
    const auto judge = [&](const std::vector<KnownCourse>& courses, const triggers::Protocol& protocol) {
        std::vector<rehearsal::CourseVerdict> verdicts;
        verdicts.reserve(courses.size());
        for (const KnownCourse& course : courses) {
            stopped = stopped || (progress && !progress(done / whole));
            if (stopped)
                break;
            verdicts.push_back(rehearsal::verdictOn(course, protocol));
            ++done;
        }
        return verdicts;
    };
    const auto pastBefore = judge(material.past, before);
    const auto pastAfter = judge(material.past, after);
    for (std::size_t model = 0; model < inventedModels.size(); ++model) {
        const auto inventedBefore = judge(invented[model], before);
        const auto inventedAfter = judge(invented[model], after);
        result.before.invented[model] = rehearsal::figuresOf(inventedBefore);
        result.after.invented[model] = rehearsal::figuresOf(inventedAfter);
        for (std::size_t i = 0; i < std::min(inventedBefore.size(), inventedAfter.size()); ++i)
            result.inventedDifferences += rehearsal::differenceOf(i, inventedBefore[i], inventedAfter[i]) ? 1 : 0;
    }
    if (stopped)
        return fail(Reason::refused, "rehearsal: stopped");

    const auto fill = [&](RehearsedSide& side, const auto& past) {
        side.past = rehearsal::figuresOf(past);
        side.pastAlerts = alertsOf(past);
        if (!past.empty())
            side.perWeek = static_cast<double>(side.pastAlerts) / static_cast<double>(past.size()) * material.treatedLately / burdenWeeks;
    };
    fill(result.before, pastBefore);
    fill(result.after, pastAfter);
    for (std::size_t i = 0; i < material.past.size(); ++i)
        if (auto difference = rehearsal::differenceOf(i, pastBefore[i], pastAfter[i]))
            result.differences.push_back({pastBefore[i].name, pastBefore[i].kind, difference->in, std::move(difference->before),
                                          std::move(difference->after)});
    return result;
}

}  // namespace ebbline::desk
