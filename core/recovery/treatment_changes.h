#pragma once
/// \file
/// What differs between two records of one treatment. Pure, no words.

#include "core/recovery/treatment.h"

namespace ebbline::recovery {

/// What a record says, in the parts in which people read it.
enum class TreatmentPart : std::uint8_t {
    time,
    threadAdded,
    threadRemoved,
    threadOrder,       ///< the same threads, numbered otherwise
    side,
    zone,
    track,             ///< view, entry point or end
    ending,
    thread,            ///< material, form, gauge or length
    instrument,        ///< needle or cannula, or its length
    lot,               ///< lot, expiry or product
    volume,
    epinephrine,
    redoing,
    solution,          ///< of the anaesthetic, with what was given outside the tracks
    otherwise,
    weight,
    placedBy,
    dressings,
    cautions,
    consent,
    learningConsent,
    baseline,
    plan,
    note,
};

struct TreatmentChange {
    TreatmentPart part = TreatmentPart::time;
    int former = 0;  ///< number of the thread in the former record, counted from 1; 0: of none
    int now = 0;     ///< the same in the one that stands in its place
    bool operator==(const TreatmentChange&) const = default;
};

/// The time, the threads one by one in the order of the former record and then the new ones, then the rest in the order of the parts. A thread is the same where it
/// lies (compareWithPlan()), and of those that lie nowhere near where it has the same number. Whose a treatment is, and why it was
/// corrected, are no part of this.
std::vector<TreatmentChange> changesOf(const Treatment& former, const Treatment& now);

}  // namespace ebbline::recovery
