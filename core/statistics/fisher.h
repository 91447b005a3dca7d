#pragma once
/// \file
/// Fisher's exact test of a table of two by two counts
///
///              yes   no
///     first     a     b
///     second    c     d
///
/// given its margins. The two-sided probability adds all tables that are at most as likely as the one
/// seen. The odds ratio is the conditional maximum-likelihood one and its interval inverts the two
/// one-sided tests, so neither is (a d) / (b c) nor does the interval always agree with the two-sided
/// probability.
/// Source: R. A. Fisher, "The Design of Experiments", Edinburgh 1935, chapter 2; A. Agresti,
/// "Categorical Data Analysis", 3rd ed., Wiley 2013, sections 3.5 and 16.6.

#include "core/result/result.h"

#include <optional>

namespace ebbline::statistics {

struct TwoByTwo {
    long a;
    long b;
    long c;
    long d;
};

struct FisherTest {
    double twoSided;  ///< probabilities, 0 < p <= 1
    double less;      ///< of an `a` as small as this or smaller
    double greater;   ///< of an `a` as large as this or larger
    std::optional<double> oddsRatio;      ///< none: without bound, `a` is as large as it can be
    double oddsRatioLow;                  ///< 0 if `a` is as small as it can be
    std::optional<double> oddsRatioHigh;  ///< none: without bound
};

/// Sum of the counts that is accepted.
inline constexpr long maximumFisherTotal = 1'000'000;

/// \returns Reason::outOfRange for a negative count, a sum above maximumFisherTotal or a confidence
///          not within 0..1; Reason::notEnough if a row or a column is empty: then no other table is
///          possible, and nothing can be said.
Result<FisherTest> fisherExact(const TwoByTwo& table, double confidence = 0.95);

}  // namespace ebbline::statistics
