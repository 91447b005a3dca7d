#pragma once
/// \file
/// The same subjects answered yes or no twice: has the share changed? Only those who changed count.
///
/// Source: Q. McNemar, "Note on the sampling error of the difference between correlated proportions or
/// percentages", Psychometrika 12 (1947) 153-157; A. Agresti, "Categorical Data Analysis", 3rd ed.,
/// Wiley 2013, section 11.1.

#include "core/statistics/proportions.h"

namespace ebbline::statistics {

struct McNemar {
    double exact;        ///< two-sided probability of so uneven a change, by the binomial distribution
    double chiSquare;    ///< (b - c)^2 / (b + c), without correction; for many changes
    double probability;  ///< of a value as large as chiSquare
};

/// `yesNo` changed from yes to no, `noYes` the other way.
/// \returns Reason::outOfRange for a negative count; Reason::notEnough if nobody changed.
Result<McNemar> mcNemar(long yesNo, long noYes);

struct PairedDifference {
    double value;       ///< share of yes the second time minus the first
    Interval interval;
};

/// How far the share of yes moved among `subjects`, of whom `yesNo` changed from yes to no and `noYes`
/// the other way: the interval after adding half a subject to each of the four cells, so that nobody
/// changing is no certainty.
/// Source: A. Agresti, Y. Min, "Simple improved confidence intervals for comparing matched
/// proportions", Statistics in Medicine 24 (2005) 729-740 (from memory).
/// \returns Reason::outOfRange for a negative count, more changes than subjects, no subject or a
///          confidence outside 0..1.
Result<PairedDifference> pairedDifference(long yesNo, long noYes, long subjects, double confidence = 0.95);

}  // namespace ebbline::statistics
