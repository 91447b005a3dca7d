#pragma once
/// \file
/// Watches a series for a slow drift: the exponentially weighted moving average (EWMA) with exact
/// limits from the first observation on.
///
///     average_i = weight * x_i + (1 - weight) * average_(i-1),  average_0 = centre
///     limits_i  = centre +- width * spread * sqrt(weight / (2 - weight) * (1 - (1 - weight)^(2 i)))
///
/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 6.3.2.4 "EWMA Control Charts",
/// doi:10.18434/M32189. The factor in (2 i), which the handbook drops for large i, follows from
/// independent x_i of equal variance. Unit: whatever unit the observations have.

#include "core/result/result.h"

namespace ebbline::statistics {

struct EwmaDesign {
    double weight;  ///< share of the newest observation, 0 < weight <= 1
    double centre;  ///< expected observation, finite; also the start
    double spread;  ///< standard deviation of one observation, > 0
    double width;   ///< half-width of the limits in standard deviations, > 0
};

/// Closed interval.
struct Limits {
    double lower;
    double upper;
};

enum class Verdict { within, above, below };

class Ewma {
public:
    /// \returns Reason::outOfRange naming the field.
    static Result<Ewma> create(const EwmaDesign& design);

    /// Takes the next observation. A missing one is not a zero: do not call this for it.
    /// \returns Reason::notFinite, and then nothing has changed.
    Result<Verdict> observe(double observation);

    double average() const noexcept { return m_average; }
    int observationCount() const noexcept { return m_count; }
    Limits limits() const noexcept;        ///< for the present average
    Limits steadyLimits() const noexcept;  ///< what limits() approaches

private:
    explicit Ewma(const EwmaDesign& design) noexcept : m_design(design), m_average(design.centre) {}
    Limits limitsFor(double varianceShare) const noexcept;

    EwmaDesign m_design;
    double m_average;
    int m_count = 0;
};

}  // namespace ebbline::statistics
