#include "tests/bench/defaults_beyond.h"

#include "tests/bench/detection_tables.h"
#include "tests/bench/warned.h"

#include <cstdio>
#include <string>

namespace ebbline::bench {

using namespace ebbline::rehearsal;
using recovery::Urgency;

namespace {

constexpr std::array twoRhythms{Rhythm::twice, Rhythm::plan};
/// A day, and the minute to which moments of invented courses are cut.
constexpr auto dayAndMinute = std::chrono::hours(24) + std::chrono::minutes(1);

/// Courses of a kind whose onset is known.
struct Told {
    long courses = 0;
    long byTrigger = 0;
    long byEither = 0;
    long withinDay = 0;         ///< by either
    long callNowWithinDay = 0;  ///< the same, and it asks for a call or more

    void take(const KnownCourse& course, const triggers::Protocol& protocol)
    {
        const clock::Moment& onset = *course.truth.onset;
        const auto soon = [&](const std::optional<clock::Moment>& at) { return at && at->at <= onset.at + dayAndMinute; };
        const CourseVerdict verdict = verdictOn(course, protocol);
        // What asks somebody to act before the review is an alert, of a warning rule as of a trigger.
        const auto warned = firstWarning(course, Urgency::nextWorkingDay, onset);
        const auto warnedToCall = firstWarning(course, Urgency::callNow, onset);
        const bool raised = verdict.sinceOnset.has_value();
        bool raisedToCall = false;
        for (const triggers::Finding& finding : verdict.raised)
            raisedToCall = raisedToCall || (finding.trigger != triggers::Trigger::silence && finding.urgency <= Urgency::callNow
                                            && finding.raisedAt.at >= onset.at && soon(finding.raisedAt));
        ++courses;
        byTrigger += raised;
        byEither += raised || warned;
        withinDay += (raised && soon(verdict.sinceOnset->raisedAt)) || soon(warned);
        callNowWithinDay += raisedToCall || soon(warnedToCall);
    }

    void print(const std::string& name) const
    {
        std::printf("| %s | %s | %s | %s | %s |\n", name.c_str(), text(byTrigger, courses).c_str(), text(byEither, courses).c_str(),
                    text(withinDay, courses).c_str(), text(callNowWithinDay, courses).c_str());
    }
};

/// Plain courses in which something would have begun so many hours after the treatment: what is raised by chance from then on.
std::vector<KnownCourse> supposed(const Invention& invention, int count, int hours)
{
    std::vector<KnownCourse> courses = cohort(invention, Kind::plain, count);
    for (KnownCourse& course : courses) {
        course.truth.onset = course.input.treated;
        course.truth.onset->at += std::chrono::hours(hours);
    }
    return courses;
}

Told toldOf(const std::vector<KnownCourse>& courses, const triggers::Protocol& protocol)
{
    Told told;
    for (const KnownCourse& course : courses)
        told.take(course, protocol);
    return told;
}

struct Strength {
    const char* name;
    double trouble;
    double pace;
};
constexpr std::array strengths{Strength{"usual", 1, 1}, Strength{"half the size", 0.5, 1}, Strength{"half the pace", 1, 0.5},
                               Strength{"half of both", 0.5, 0.5}};

/// `33 h`; of the courses that were found.
std::string hoursText(const KindFigures& figures)
{
    if (!figures.medianDelayHours)
        return "none";
    char buffer[16];
    std::snprintf(buffer, sizeof buffer, "%.0f h", *figures.medianDelayHours);
    return buffer;
}

}  // namespace

void printRare(std::uint64_t seed, int count)
{
    const triggers::Protocol protocol = triggers::defaultProtocol();
    for (const Model model : models)
        for (const Rhythm rhythm : twoRhythms) {
            const Invention invention{model, rhythm, seed};
            std::printf("### Rarer complications, the default protocol: %s, %s, %d courses each, seed %llu\n\n"
                        "| kind | found by a trigger | by a trigger or a warning rule | ... within 24 h | call now within 24 h |\n"
                        "|---|---|---|---|---|\n",
                        nameOf(model), nameOf(rhythm), count, static_cast<unsigned long long>(seed));
            for (const Kind kind : rareKinds)
                toldOf(cohort(invention, kind, count), protocol).print("`" + std::string(word(kind)) + "`");
            for (const int day : {1, 5, 10})
                toldOf(supposed(invention, count, 24 * day), protocol).print("plain, as if from day " + std::to_string(day) + " on");
            std::printf("\n");
        }
}

void printOutsideFamily(std::uint64_t seed, int count)
{
    std::printf("### Infections and haematomas outside the family, the default protocol, %d courses each, seed %llu\n\n"
                "| model, entries | strength | infection | ... 72 h | median delay | haematoma | ... 24 h | median delay |\n"
                "|---|---|---|---|---|---|---|---|\n",
                count, static_cast<unsigned long long>(seed));
    for (const Model model : models)
        for (const Rhythm rhythm : twoRhythms)
            for (const Strength& strength : strengths) {
                const Invention invention{model, rhythm, seed, strength.trouble, strength.pace};
                const Figures figures = figuresUnder({cohort(invention, Kind::infection, count), cohort(invention, Kind::haematoma, count)},
                                                     triggers::defaultProtocol());
                const KindFigures& infection = figures.at("infection");
                const KindFigures& haematoma = figures.at("haematoma");
                std::printf("| %s, %s | %s | %s | %s | %s | %s | %s | %s |\n", nameOf(model), nameOf(rhythm), strength.name,
                            text(infection.flagged, infection.courses).c_str(), text(infection.withinThreeDays, infection.courses).c_str(),
                            hoursText(infection).c_str(), text(haematoma.flagged, haematoma.courses).c_str(),
                            text(haematoma.withinDay, haematoma.courses).c_str(), hoursText(haematoma).c_str());
            }
    std::printf("\n");
}

}  // namespace ebbline::bench
