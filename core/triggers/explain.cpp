#include "core/triggers/judge.h"

#include "core/bytes/decimal.h"

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

/// The score that stands for all symptoms may be a usual one.
std::string overall(const Finding& finding, const std::string& says, const std::string& score)
{
    return "all symptoms together " + says + " on day " + std::to_string(finding.day) + ", among them "
           + std::string(recovery::word(finding.stream.symptom)) + " with " + score + ", usual is up to "
           + number(finding, "usualHigh");
}

/// With one decimal, and none where it is whole.
std::string decimal(const Finding& finding, const char* name)
{
    const auto found = finding.numbers.find(name);
    if (found == finding.numbers.end())
        return "?";
    const std::string number = bytes::fixedDecimal(found->second, 1);
    return number.ends_with(".0") ? number.substr(0, number.size() - 2) : number;
}

/// What slowness is judged on: today's answer alone may be a usual one.
std::string ofThree(const Finding& finding)
{
    return decimal(finding, "mean") + " of 10 on average over its last three days with an answer";
}

/// What a fold's note rests on, beside its score.
std::string grounds(const Finding& finding)
{
    std::string text;
    if (finding.numbers.contains("weekBefore"))
        text += ", " + number(finding, "weekBefore") + " a week before";
    if (finding.numbers.contains("together"))
        text += ", " + number(finding, "together") + " points over its last three days";
    if (finding.numbers.contains("beginning"))
        text += ", " + decimal(finding, "beginning") + " in its first days";
    return text.empty() ? ", noted because it is so late" : text;
}

}  // namespace

bool isOverall(const Finding& finding)
{
    if (const auto marked = finding.numbers.find("overall"); marked != finding.numbers.end())
        return marked->second != 0;
    return finding.stream.side == recovery::Side::none
           && (finding.trigger == Trigger::level || finding.trigger == Trigger::slowRecovery);
}

std::string explain(const Finding& finding)
{
    const std::string day = " on day " + std::to_string(finding.day);
    switch (finding.trigger) {
    case Trigger::level:
        if (isOverall(finding))
            return overall(finding, "are far above the usual", number(finding, "score") + " of 10");
        return what(finding) + " is far above the usual: " + number(finding, "score") + " of 10" + day + ", usual is up to "
               + number(finding, "usualHigh");
    case Trigger::rebound:
        if (finding.numbers.contains("neverFell"))
            return what(finding) + " rises: " + number(finding, "score") + " of 10" + day + ", the lowest so far was " + number(finding, "lowest");
        return what(finding) + " rises again: " + number(finding, "score") + " of 10" + day + " after it had come down to "
               + number(finding, "lowest");
    case Trigger::sideDivergence:
        return "the sides part: " + std::string(recovery::word(finding.symptom())) + " left "
               + number(finding, "left") + ", right " + number(finding, "right") + day
               + (finding.numbers.contains("apart") ? "; all symptoms together " + number(finding, "apart") + " points apart" : "");
    case Trigger::slowRecovery:
        if (isOverall(finding))
            return overall(finding, "are slow to go", ofThree(finding));
        return what(finding) + " is slow to go: " + ofThree(finding) + " up to day " + std::to_string(finding.day) + ", usual is up to "
               + number(finding, "usualHigh");
    case Trigger::persistentPuckering:
        return what(finding) + " is still there: " + number(finding, "score") + " of 10" + day + grounds(finding);
    case Trigger::silence:
        return "no entry for " + number(finding, "waited") + " days by day " + std::to_string(finding.day)
               + (finding.numbers.contains("visit")
                      ? ", and no follow-up recorded by then; the visit was to be on day " + number(finding, "visit")
                      : "");
    }
    return "unknown trigger";
}

}  // namespace ebbline::triggers
