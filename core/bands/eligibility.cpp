#include "core/bands/eligibility.h"

namespace ebbline::bands {

std::string_view word(Refusal refusal)
{
    switch (refusal) {
    case Refusal::noConsent: return "no-consent";
    case Refusal::stillOpen: return "still-open";
    case Refusal::complicated: return "complicated";
    case Refusal::treated: return "treated";
    case Refusal::tooFewDays: return "too-few-days";
    }
    return "unknown";
}

std::optional<Refusal> refusalOf(const CourseFacts& facts)
{
    if (!facts.consented)
        return Refusal::noConsent;
    if (!facts.closed)
        return Refusal::stillOpen;
    if (!facts.uncomplicated)
        return Refusal::complicated;
    if (facts.treated)
        return Refusal::treated;
    if (facts.observedDays < fewestObservedDays)
        return Refusal::tooFewDays;
    return std::nullopt;
}

}  // namespace ebbline::bands
