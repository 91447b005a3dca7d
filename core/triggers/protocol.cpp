#include "core/triggers/protocol.h"

#include <cmath>
#include <string>
#include <utility>

namespace ebbline::triggers {

namespace {

constexpr std::array<std::pair<Trigger, std::string_view>, 6> words{{{Trigger::level, "level"},
                                                                     {Trigger::rebound, "rebound"},
                                                                     {Trigger::sideDivergence, "side-divergence"},
                                                                     {Trigger::slowRecovery, "slow-recovery"},
                                                                     {Trigger::persistentPuckering, "persistent-puckering"},
                                                                     {Trigger::silence, "silence"}}};

}  // namespace

std::string_view word(Trigger trigger)
{
    for (const auto& [value, text] : words)
        if (value == trigger)
            return text;
    return "unknown";
}

Result<Trigger> triggerFromWord(std::string_view text)
{
    for (const auto& [value, candidate] : words)
        if (candidate == text)
            return value;
    return fail(Reason::malformed, "trigger: '" + std::string(text.substr(0, 40)) + "' is not one of ours");
}

Done check(const Thresholds& t)
{
    struct Named { const char* name; double value; };
    for (const Named& each : {Named{"level", t.level}, Named{"levelOverall", t.levelOverall}, Named{"rebound", t.rebound},
                              Named{"sideDivergence", t.sideDivergence}, Named{"oneSideFills", t.oneSideFills},
                              Named{"oneSideWorsens", t.oneSideWorsens}, Named{"slowRecovery", t.slowRecovery},
                              Named{"slowOverall", t.slowOverall}}) {
        if (!std::isfinite(each.value))
            return fail(Reason::notFinite, std::string(each.name) + ": want a number");
        if (each.value <= lowestThreshold || each.value > highestThreshold)
            return fail(Reason::outOfRange, std::string(each.name) + ": want above 0 and at most 100");
    }
    if (!(t.falseAlertBudget >= smallestBudget && t.falseAlertBudget <= largestBudget))
        return fail(Reason::outOfRange, "falseAlertBudget: want 0.5..50 alerts per 100 courses");
    return {};
}

Protocol defaultProtocol()
{
    return Protocol{.name = "Face and neck", .version = 1, .carePlan = aftercare::defaultCarePlan(), .thresholds = {}};
}

}  // namespace ebbline::triggers
