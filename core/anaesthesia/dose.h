#pragma once
/// \file
/// Lidocaine given in a treatment against the maximum of the label.
///
/// Sources: US prescribing information, lidocaine hydrochloride injection: plain 4.5 mg/kg, in
/// general not over 300 mg; with epinephrine 7 mg/kg, in general not over 500 mg; 1 % is
/// 10 mg/mL. Amounts are computed in mg/kg only: the mg/lb figures printed on labels disagree.
/// Buffering with bicarbonate dilutes the solution and leaves the milligrams as they were.
/// Tumescent doses are left out on purpose. The practitioner may lower a limit, never raise it.
/// Lidocaine given otherwise (blocks, other strengths) counts toward the same total. Whether it held
/// epinephrine is not written down, so with any of it the lower, plain maximum holds for all. The same where
/// some of the solution held epinephrine and some did not: the labels name a maximum for each alone and none
/// for both together, and the plain one is right for whichever part (decision: docs/clinical/anaesthesia.md). What is absorbed of a cream is not known and not counted.

#include "core/recovery/treatment.h"

namespace ebbline::anaesthesia {

struct Limits {
    double plainMgPerKg = 4.5;
    double plainCapMg = 300;
    double epinephrineMgPerKg = 7.0;
    double epinephrineCapMg = 500;
    bool operator==(const Limits&) const = default;
};

/// A clinic's own limits: each at most the label's, and at least 0.1 mg/kg or 1 mg.
/// \returns Reason::outOfRange naming the limit.
Done check(const Limits& limits);

struct Dose {
    double givenMl;            ///< volume injected, mL, all tracks and extra
    double solutionMg;         ///< lidocaine in that volume, mg
    double otherwiseMg;        ///< lidocaine given otherwise, mg; 0 also where none is written down
    double givenMg;            ///< both together, mg
    double concentrationMgPerMl;  ///< of what was injected, after buffering
    double epinephrineUg;      ///< microgram; the most that it can be where only some of the solution held it
    bool epinephrineInPart;    ///< the solution held it, and a thread says that it had none of it somewhere, or does
                               ///< not say where another one does
    std::optional<double> maximumMg;  ///< empty without a weight
    std::optional<double> maximumMl;  ///< of this solution, beside what was given otherwise; at least 0
    recovery::Drug limitedAs;  ///< whose maximum holds: once some was given otherwise or without, the lower of both
    bool capped = false;       ///< the maximum is the cap, not mg/kg
    bool overMaximum = false;  ///< by more than the rounding of a sum, a billionth of the maximum
    std::vector<int> tracksOverHalfMl;  ///< placements, counted from 1, with more than 0.5 mL
                                        ///< (common practice, no source)
};

/// mg per mL of a solution of `percent` grams per 100 mL, after `bicarbonatePart`.
/// \returns Reason::outOfRange for percent outside 0.1..4 or a part outside 0..1.
Result<double> concentration(double percent, double bicarbonatePart = 0);

/// The largest amount by the label, mg. \returns Reason::notFinite or Reason::outOfRange for a
/// weight outside 30..300 kg: then no number may be shown.
Result<double> maximumMg(recovery::Drug drug, double weightKg, const Limits& limits = {});

/// \returns Reason::outOfRange or Reason::notFinite naming the field.
Result<Dose> doseOf(const recovery::Treatment& treatment, const Limits& limits = {});

}  // namespace ebbline::anaesthesia
