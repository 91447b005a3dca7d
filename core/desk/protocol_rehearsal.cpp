#include "core/desk/protocol_rehearsal.h"

#include "core/desk/practice.h"

#include <algorithm>

namespace ebbline::desk {

namespace {

using rehearsal::Kind;
using rehearsal::KnownCourse;

std::vector<KnownCourse> inventedCourses()
{
    const rehearsal::Invention invention{rehearsal::Model::decay, rehearsal::Rhythm::plan, 23};
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

bool differs(const std::optional<triggers::Finding>& a, const std::optional<triggers::Finding>& b)
{
    return a.has_value() != b.has_value() || (a && a->raisedAt.at != b->raisedAt.at);
}

}  // namespace

Result<ProtocolRehearsal> rehearseProtocol(const RehearsalMaterial& material, const triggers::Protocol& before,
                                           const triggers::Protocol& after, const std::function<bool(double)>& progress)
{
    std::vector<KnownCourse> invented = inventedCourses();
    ProtocolRehearsal result;
    result.pastCourses = material.past.size();
    result.inventedCourses = invented.size();
    const double whole = static_cast<double>(2 * (material.past.size() + invented.size()));
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
    const auto inventedBefore = judge(invented, before);
    const auto inventedAfter = judge(invented, after);
    if (stopped)
        return fail(Reason::refused, "rehearsal: stopped");

    const auto fill = [&](RehearsedSide& side, const auto& past, const auto& madeUp) {
        side.past = rehearsal::figuresOf(past);
        side.invented = rehearsal::figuresOf(madeUp);
        side.pastAlerts = alertsOf(past);
        if (!past.empty())
            side.perWeek = static_cast<double>(side.pastAlerts) / static_cast<double>(past.size()) * material.treatedLately / burdenWeeks;
    };
    fill(result.before, pastBefore, inventedBefore);
    fill(result.after, pastAfter, inventedAfter);
    for (std::size_t i = 0; i < material.past.size(); ++i)
        if (differs(pastBefore[i].first, pastAfter[i].first))
            result.differences.push_back({pastBefore[i].name, pastBefore[i].kind, pastBefore[i].first, pastAfter[i].first});
    for (std::size_t i = 0; i < invented.size(); ++i)
        result.inventedDifferences += differs(inventedBefore[i].first, inventedAfter[i].first) ? 1 : 0;
    return result;
}

}  // namespace ebbline::desk
