#pragma once
/// \file
/// A high score that stays, whatever the thresholds: from its day on pain, swelling, bruising or tightness of so many points,
/// on average over its last three days with an answer and on each of the last two, is a slow recovery. No protocol changes it.

#include "core/recovery/symptom.h"

namespace ebbline::triggers {

/// Score points. Pain of 5 to 10 after an operation is severe by what it keeps from (Gerbershagen et al., Br J Anaesth 107 (2011) 619);
/// that the other three count alike is a decision of ours.
inline constexpr int stuckFrom = 5;

/// Days of recovery, decisions of ours: such pain is asked about sooner than what heals slowest, swelling, bruising and tightness.
inline constexpr int painStuckFirstDay = 10;
inline constexpr int othersStuckFirstDay = 14;

/// From which day on; never for a symptom of which a high score that stays is no slow recovery.
constexpr bool mayBeStuck(recovery::Symptom symptom, int day)
{
    using enum recovery::Symptom;
    return symptom == pain ? day >= painStuckFirstDay
                           : (symptom == swelling || symptom == bruising || symptom == tightness) && day >= othersStuckFirstDay;
}

}  // namespace ebbline::triggers
