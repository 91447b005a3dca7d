#pragma once
/// \file
/// Do two ways of measuring, or several raters, agree? Correlation does not answer that: it is 1 for a
/// scale that always reads double.

#include "core/result/result.h"
#include "core/statistics/proportions.h"

#include <optional>
#include <span>
#include <vector>

namespace ebbline::statistics {

/// Bias and limits of agreement of paired measurements, in their unit.
struct LimitsOfAgreement {
    long pairs;
    double bias;              ///< mean of the differences
    double deviation;         ///< standard deviation of the differences, > 0
    Interval limits;          ///< within which the share `coverage` of the differences is expected
    Interval biasInterval;    ///< 95 % intervals, by Student's distribution
    Interval lowerInterval;   ///< of the lower limit; its standard error is sqrt(3 / pairs) deviations
    Interval upperInterval;
};

/// Assumes differences that are normal and do not grow with the size of what is measured.
/// Source: J. M. Bland, D. G. Altman, "Statistical methods for assessing agreement between two methods of
/// clinical measurement", Lancet 327 (1986) 307-310; the paper rounds 1.96 to 2.
/// \returns Reason::notFinite; Reason::outOfRange unless 0 < coverage < 1; Reason::notEnough below three
///          differences or if all are equal.
Result<LimitsOfAgreement> limitsOfAgreement(std::span<const double> differences, double coverage = 0.95);

enum class Disagreement {
    any,        ///< each as bad as any other: Cohen's kappa
    linear,     ///< by the number of categories between
    quadratic,  ///< by its square; close to an intraclass correlation
};

struct Kappa {
    double kappa;          ///< 1: complete agreement, 0: as by chance
    /// Large-sample; none where it is 0, because so complete an agreement shows no spread.
    std::optional<double> standardError;
};

/// Agreement of two raters beyond chance. `counts[i][j]`: the first said i, the second j. Depends on how
/// common the categories are: do not compare kappas of different populations.
/// Sources: J. Cohen, "Weighted kappa", Psychological Bulletin 70 (1968) 213-220; standard error of J. L.
/// Fleiss, J. Cohen, B. S. Everitt, Psychological Bulletin 72 (1969) 323-327.
/// \returns Reason::outOfRange for a negative count or a table that is not square with 2..100 categories;
///          Reason::notEnough without counts or where chance alone would always agree.
Result<Kappa> kappa(std::span<const std::vector<long>> counts, Disagreement disagreement);

/// Intraclass correlations of the same raters on all subjects.
struct IntraclassCorrelation {
    double oneWay;         ///< (1,1): raters differ from subject to subject
    double absolute;       ///< (2,1): raters are a sample, and must agree in the value
    double consistency;    ///< (3,1): these raters, up to a constant of each
    double oneWayMean;     ///< the same for the mean of all raters
    std::optional<double> absoluteMean;  ///< none where raters differ so little, and the rest so much, that
                                         ///< its denominator is not above 0
    double consistencyMean;
    std::optional<Interval> absoluteInterval;  ///< 95 %; none where raters agree too well to tell
    double betweenSubjects;  ///< mean squares
    double withinSubjects;
    double betweenRaters;
    double residual;
};

/// `ratings[subject][rater]`. May be negative: raters then agree less than by chance.
/// Source: P. E. Shrout, J. L. Fleiss, "Intraclass correlations: uses in assessing rater reliability",
/// Psychological Bulletin 86 (1979) 420-428.
/// \returns Reason::notFinite; Reason::outOfRange for rows of different length; Reason::notEnough below
///          two subjects or two raters, or if the subjects do not differ.
Result<IntraclassCorrelation> intraclassCorrelation(std::span<const std::vector<double>> ratings);

}  // namespace ebbline::statistics
