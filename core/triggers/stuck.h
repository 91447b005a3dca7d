#pragma once
/// \file
/// A high score that stays, whatever the thresholds: from its day on pain, swelling, bruising or tightness of so many points,
/// on average over its last three days with an answer and on each of the last two, is a slow recovery. No protocol changes it.

#include "core/recovery/symptom.h"

#include <optional>

namespace ebbline::triggers {

struct Stuck {
    int firstDay;  ///< of recovery; a decision of ours
    int from;      ///< score points
};

/// 5: pain of 5 to 10 after an operation is severe by what it keeps from (Gerbershagen et al., Br J Anaesth 107 (2011) 619).
inline constexpr Stuck stuckPain{10, 5};
/// Swelling, bruising and tightness, which heal slower: decisions of ours.
inline constexpr Stuck stuckOther{14, 6};

/// \returns nothing for a symptom of which a high score that stays is no slow recovery.
constexpr std::optional<Stuck> stuckOf(recovery::Symptom symptom)
{
    using enum recovery::Symptom;
    switch (symptom) {
    case pain: return stuckPain;
    case swelling:
    case bruising:
    case tightness: return stuckOther;
    case twinges:
    case puckering:
    case numbness: break;
    }
    return std::nullopt;
}

}  // namespace ebbline::triggers
