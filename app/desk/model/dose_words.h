#pragma once
/// \file
/// The local anaesthetic of a treatment in words: what was given, the largest amount by the
/// label, and whose limit that is. No number is shown where core refuses one.

#include "core/anaesthesia/dose.h"

#include <QString>

namespace ebbline::deskapp {

struct DoseWords {
    QString given;     ///< "12.4 mL, 113 mg lidocaine (9.1 mg/mL)", and what was given otherwise
    QString maximum;   ///< "At most 420 mg, 46 mL of this solution"; what is missing, without a weight
    QString source;    ///< "Limit by US label: 7 mg/kg, in general not over 500 mg"
    QString clinic;    ///< "Your clinic's limit: 6 mg/kg, not over 400 mg"; empty where it is the label's
    QString share;     ///< "27 % of the maximum"; empty without one
    double part = 0;   ///< given / maximum, 0 without a maximum
    QString warning;   ///< over the maximum; empty if not
    QString tracks;    ///< which tracks took more than 0.5 mL; empty if none
    QString problem;   ///< why there is no number
    bool operator==(const DoseWords&) const = default;
};

/// `limits`: the clinic's, Desk::doseLimits(). They are named apart from the label's.
DoseWords doseWords(const recovery::Treatment& treatment, const anaesthesia::Limits& limits);

}  // namespace ebbline::deskapp
