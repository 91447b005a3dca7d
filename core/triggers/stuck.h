#pragma once
/// \file
/// A high score that stays, whatever the thresholds: from this day on pain, swelling, bruising or tightness of so many points,
/// on average over its last three days with an answer and on each of the last two, is a slow recovery. No protocol changes it.

namespace ebbline::triggers {

inline constexpr int stuckFirstDay = 10;  ///< of recovery; a decision of ours

/// Score points. Pain of 5 to 10 after an operation is severe by what it keeps from (Gerbershagen et al., Br J Anaesth 107 (2011) 619);
/// that the other three count alike is a decision of ours.
inline constexpr int stuckFrom = 5;

}  // namespace ebbline::triggers
