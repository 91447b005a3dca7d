#pragma once
/// \file
/// Warning signs to urgency, with reasons. Deterministic; needs no history, no vault, no
/// network and no statistics; never softened by anything else an entry says.
///
/// Every rule has an id, a threshold with its source, and a page in docs/clinical/warnings.md.

#include "core/recovery/entry.h"

#include <optional>
#include <string>
#include <vector>

namespace ebbline::warnings {

/// Stable names of the rules; stored and sent as text.
struct Finding {
    std::string rule;             ///< e.g. "fever", "spreading", "breathing"
    recovery::Urgency urgency;
    recovery::Side side = recovery::Side::none;
    std::vector<std::string> reasons;  ///< words of signs and measured values, e.g. "temperature 38.2 C"
    bool operator==(const Finding&) const = default;
};

/// What the rules need beside the entry itself.
struct Circumstances {
    clock::Moment treated;
    /// Local anaesthetic with epinephrine lasts up to 400 minutes in a dermatology text: weakness
    /// of the face within eight hours may be the numbing; after that it is not, nor where the entry's clock lies more than an
    /// hour before the treatment (a decision) and so says nothing about it.
    int weaknessGraceHours = 8;
    double feverCelsius = 38.0;  ///< >= : the safer side of the boundary
};

/// Whether `fresh` says something that `known`, of the same rule and side, did not: it is more urgent, or, no
/// less urgent, has a reason that `known` lacks, or the same one with a higher value. A hotter fever is worse
/// than a fever; a corrected note is not.
bool isWorse(const Finding& fresh, const Finding& known);

/// Judges one entry. Most urgent first; equal urgency in the order of the rules.
std::vector<Finding> judge(const recovery::Entry& entry, const Circumstances& circumstances);

/// The signs that raise this urgency by themselves once the numbing has worn off, in the order of allSigns: what a list
/// of reasons to call is made from, so that it cannot ask for less than the rules do.
std::vector<recovery::Sign> signsRaising(recovery::Urgency urgency);

/// The most urgent of them; empty if there is none.
std::optional<recovery::Urgency> mostUrgent(const std::vector<Finding>& findings);

}  // namespace ebbline::warnings
