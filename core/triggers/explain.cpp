#include "core/triggers/judge.h"

#include <cmath>
#include <string>

namespace ebbline::triggers {

namespace {

std::string number(const Finding& finding, const char* name)
{
    const auto found = finding.numbers.find(name);
    return found == finding.numbers.end() ? "?" : std::to_string(std::lround(found->second));
}

std::string what(const Finding& finding)
{
    const std::string symptom(recovery::word(finding.stream.symptom));
    switch (finding.stream.side) {
    case recovery::Side::left: return symptom + " on the left";
    case recovery::Side::right: return symptom + " on the right";
    case recovery::Side::none: break;
    }
    return symptom;
}

/// A finding of no side is one over all symptoms: the score that stands for them may be a usual one.
bool isOverall(const Finding& finding)
{
    return finding.stream.side == recovery::Side::none;
}

std::string overall(const Finding& finding, const std::string& says)
{
    return "all symptoms together " + says + " on day " + std::to_string(finding.day) + ", among them "
           + std::string(recovery::word(finding.stream.symptom)) + " with " + number(finding, "score")
           + " of 10, usual is up to " + number(finding, "usualHigh");
}

}  // namespace

std::string explain(const Finding& finding)
{
    const std::string day = " on day " + std::to_string(finding.day);
    switch (finding.trigger) {
    case Trigger::level:
        if (isOverall(finding))
            return overall(finding, "are far above the usual");
        return what(finding) + " is far above the usual: " + number(finding, "score") + " of 10" + day + ", usual is up to "
               + number(finding, "usualHigh");
    case Trigger::rebound:
        return what(finding) + " rises again: " + number(finding, "score") + " of 10" + day + " after it had come down to "
               + number(finding, "lowest");
    case Trigger::sideDivergence:
        return "the sides part: " + std::string(recovery::word(finding.stream.symptom)) + " left "
               + number(finding, "left") + ", right " + number(finding, "right") + day
               + (finding.numbers.contains("apart") ? "; all symptoms together " + number(finding, "apart") + " points apart" : "");
    case Trigger::slowRecovery:
        if (isOverall(finding))
            return overall(finding, "are slow to go");
        return what(finding) + " is slow to go: " + number(finding, "score") + " of 10" + day + ", usual is up to "
               + number(finding, "usualHigh");
    case Trigger::persistentPuckering:
        return what(finding) + " is still there: " + number(finding, "score") + " of 10" + day;
    case Trigger::silence:
        return "no entry for " + number(finding, "waited") + " days by day " + std::to_string(finding.day)
               + (finding.numbers.contains("visit")
                      ? ", and no follow-up recorded by then; the visit was to be on day " + number(finding, "visit")
                      : "");
    }
    return "unknown trigger";
}

}  // namespace ebbline::triggers
