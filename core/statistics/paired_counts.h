#pragma once
/// \file
/// The same subjects answered yes or no twice: has the share changed? Only those who changed count.
///
/// Source: Q. McNemar, "Note on the sampling error of the difference between correlated proportions or
/// percentages", Psychometrika 12 (1947) 153-157; A. Agresti, "Categorical Data Analysis", 3rd ed.,
/// Wiley 2013, section 11.1.

#include "core/result/result.h"

namespace ebbline::statistics {

struct McNemar {
    double exact;        ///< two-sided probability of so uneven a change, by the binomial distribution
    double chiSquare;    ///< (b - c)^2 / (b + c), without correction; for many changes
    double probability;  ///< of a value as large as chiSquare
};

/// `yesNo` changed from yes to no, `noYes` the other way.
/// \returns Reason::outOfRange for a negative count; Reason::notEnough if nobody changed.
Result<McNemar> mcNemar(long yesNo, long noYes);

}  // namespace ebbline::statistics
