#include "core/triggers/protocol.h"

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

Protocol defaultProtocol()
{
    return Protocol{.name = "Face and neck", .version = 1, .carePlan = aftercare::defaultCarePlan(), .thresholds = {}};
}

}  // namespace ebbline::triggers
